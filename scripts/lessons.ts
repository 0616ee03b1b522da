/** Looks for a lesson of each technique that has none yet in docs/lessons: `npm run lessons [-- TECHNIQUE...]`. */
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { findingLesson, finished, teachable } from "@solvewright/engine";

const folder = fileURLToPath(new URL("../docs/lessons/", import.meta.url));
const fileFor = (technique: string): string => `${folder}${technique}.puzzle.yaml`;
const asked = process.argv.slice(2);
const wanted = asked.length > 0 ? asked : teachable.filter((technique) => !existsSync(fileFor(technique)));

mkdirSync(folder, { recursive: true });
for (const technique of wanted) {
  const lesson = finished(findingLesson(technique, 1));
  if (lesson) writeFileSync(fileFor(technique), lesson.text);
  console.log(`${technique}: ${lesson ? "found" : "none found"}`);
}
