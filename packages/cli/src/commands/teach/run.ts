import { dirname } from "node:path";
import { findingLesson, type Lesson, nearest, phrase, teachable, textOf } from "@solvewright/engine";
import type { Asked, Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { carriedOut, unlessStopped } from "../../long-work.ts";
import { stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { toDisk } from "../../to-disk.ts";
import { writeWhole } from "../../write-whole.ts";

const techniqueIn = ([word]: Asked["words"]): string => {
  if (teachable.includes(word!)) return word!;
  const near = nearest(word!, teachable);
  const right = `one of ${teachable.join(", ")}${near ? `; the nearest is ${near}` : ""}`;
  throw badUsage(`${printable(word!)} is no technique that can be taught. Right: ${right}.`, { read: word!, right });
};

const seedIn = ({ flags: { seed } }: Asked): number => {
  const number = seed === undefined ? 1 : Number(seed);
  if (Number.isInteger(number) && number >= 0) return number;
  throw badUsage(`--seed takes a whole number from 0, not ${seed}.`, {
    read: `--seed ${seed}`,
    right: "a whole number",
  });
};

const keyStep = ({ board, step, before }: Lesson) => ({
  say: textOf(phrase(step, before, board, "placed")),
  cells: [...step.places.keys(), ...step.removes.keys()].map((cell) => board.canvas.names[cell]!),
});

export const run: Run = async (asked) => {
  const { out, words, flags } = asked;
  const [technique, seed] = [techniqueIn(words), seedIn(asked)];
  const look = () =>
    carriedOut(findingLesson(technique, seed), asked, (tried) => out.progress("Looking for a board", `${tried} tried`));
  const made = unlessStopped(() => ({ lesson: look() }));
  if (!made) return stoppedAt(asked, "No board yet.");
  const { lesson } = made;
  if (typeof flags.to === "string" && lesson)
    await toDisk(dirname(flags.to), () => writeWhole(flags.to as string, lesson.text));
  if (flags.json) out.json(lesson ? { technique, seed, puzzle: lesson.text, ...keyStep(lesson) } : { technique, seed });
  else if (!lesson) out.line(`No board of seed ${seed} teaches ${technique}. Another --seed may.`);
  else {
    out.line(typeof flags.to === "string" ? `The puzzle lies in ${printable(flags.to)}.` : lesson.text);
    out.line(`Its key step: ${printable(keyStep(lesson).say)}`);
  }
  return lesson ? 0 : 1;
};
