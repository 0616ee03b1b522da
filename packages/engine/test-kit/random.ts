export { type Random, randomFrom } from "../src/teach/random.ts";
