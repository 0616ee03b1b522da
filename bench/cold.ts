/**
 * Plans a puzzle (`plan FILE`) or answers its first question (`why FILE`) in a process that has done nothing before, and
 * prints the milliseconds of reading, judging and that.
 */
import process from "node:process";
import { soundness } from "../packages/engine/src/search/soundness.ts";
import { planTimed } from "./proving.ts";
import { caseIn } from "./puzzles.ts";
import { asked, questionsAbout } from "./questions.ts";

const [work, file] = process.argv.slice(2);
const start = performance.now();
const { board } = caseIn(file!);
soundness(board);
const judged = performance.now();
const { ms } = work === "why" ? asked(board, questionsAbout(board)[0]!) : planTimed(board);
console.log(judged - start + ms);
