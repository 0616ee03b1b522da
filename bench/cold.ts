/** Plans one puzzle in a process that has done nothing before, and prints the milliseconds: reading, judging, planning. */
import process from "node:process";
import { soundness } from "../packages/engine/src/search/soundness.ts";
import { planTimed } from "./proving.ts";
import { caseIn } from "./puzzles.ts";

const start = performance.now();
const { board } = caseIn(process.argv[2]!);
const read = performance.now();
soundness(board);
const judged = performance.now();
const { ms } = planTimed(board);
console.log(JSON.stringify({ read: read - start, sound: judged - read, plan: ms }));
