export { type Random, randomFrom } from "../src/random.ts";
