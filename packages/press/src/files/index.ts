export { besleyCss } from "./besley.ts";
