import { dirname } from "node:path";
import {
  findingClueLesson,
  findingLesson,
  kinds,
  type Lesson,
  phrase,
  teachable,
  teachableKinds,
  textOf,
  withNearest,
} from "@solvewright/engine";
import type { Asked, Run } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { carriedOut, unlessStopped } from "../../long-work.ts";
import { stoppedAt } from "../../one-solution.ts";
import { printable } from "../../printable.ts";
import { toDisk } from "../../to-disk.ts";
import { writeWhole } from "../../write-whole.ts";

/** What is to be taught: a technique or, where no technique is called that, a kind of rule. */
interface Taught {
  readonly name: string;
  readonly as: "technique" | "kind";
}

const refused = (word: string, right: string): Error =>
  badUsage(`${printable(word)} can't be taught. Right: ${right}.`, { read: word, right });

const taughtIn = ([word]: Asked["words"]): Taught => {
  const name = word!;
  if (teachable.includes(name)) return { name, as: "technique" };
  if (teachableKinds.includes(name)) return { name, as: "kind" };
  if (kinds.some((kind) => kind.name === name))
    throw refused(name, "a kind whose meaning is not the setter's own words");
  const right = `a technique (${teachable.join(", ")}) or a kind of rule (${teachableKinds.join(", ")})`;
  throw refused(name, withNearest(right, name, [...teachable, ...teachableKinds]));
};

const finding = { technique: findingLesson, kind: findingClueLesson };

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
  const [{ name, as }, seed] = [taughtIn(words), seedIn(asked)];
  const look = () =>
    carriedOut(finding[as](name, seed), asked, (tried) => out.progress("Looking for a board", `${tried} tried`));
  const made = unlessStopped(() => ({ lesson: look() }));
  if (!made) return stoppedAt(asked, "No board yet.");
  const { lesson } = made;
  if (typeof flags.to === "string" && lesson)
    await toDisk(dirname(flags.to), () => writeWhole(flags.to as string, lesson.text));
  if (flags.json) out.json({ [as]: name, seed, ...(lesson ? { puzzle: lesson.text, ...keyStep(lesson) } : {}) });
  else if (!lesson) out.line(`No board of seed ${seed} teaches ${name}. Another --seed may.`);
  else {
    out.line(typeof flags.to === "string" ? `The puzzle lies in ${printable(flags.to)}.` : lesson.text);
    out.line(`Its key step: ${printable(keyStep(lesson).say)}`);
  }
  return lesson ? 0 : 1;
};
