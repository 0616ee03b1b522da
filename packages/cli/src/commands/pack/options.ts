import type { Plan } from "@solvewright/engine";
import type { PicturesAsked } from "@solvewright/press/files";
import type { Asked } from "../../command.ts";
import { badUsage } from "../../faults.ts";
import { printable } from "../../printable.ts";

const weekdays = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];
const months = "January February March April May June July August September October November December".split(" ");

const badDate = (read: string) => badUsage("--date takes a day, such as 2026-11-27.", { read, right: "YYYY-MM-DD" });

/** "2026-11-27" as "Friday 27 November 2026"; undefined where no day is given. */
export const dateIn = ({ date }: Asked["flags"]): string | undefined => {
  if (date === undefined) return undefined;
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(String(date)) ?? [];
  if (!year) throw badDate(String(date));
  const found = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  if (found.getUTCMonth() !== Number(month) - 1 || found.getUTCDate() !== Number(day)) throw badDate(String(date));
  return `${weekdays[found.getUTCDay()]} ${Number(day)} ${months[Number(month) - 1]} ${year}`;
};

const ranges = (text: string): number[] | undefined => {
  const pieces = text.split(/[\s,]+/).filter((piece) => piece !== "");
  const spans = pieces.map((piece) => /^(\d{1,4})(?:-(\d{1,4}))?$/.exec(piece));
  if (pieces.length === 0 || spans.includes(null)) return undefined;
  return spans.flatMap((span) => {
    const [from, to] = [Number(span![1]), Number(span![2] ?? span![1])];
    return Array.from({ length: Math.max(0, to - from + 1) }, (_, k) => from + k);
  });
};

/** The beats that are to be drawn, by the numbers of the running order. */
const beatsIn = ({ beats }: Asked["flags"], { acts }: Plan): number[] => {
  if (beats === undefined) return [];
  const numbers = acts.flatMap((act) => act.beats.map(({ n }) => n));
  if (beats === "all") return numbers;
  const right = `beats of this show, ${numbers[0]} to ${numbers.at(-1)}, or all`;
  const wanted = ranges(String(beats));
  if (!wanted) throw badUsage('--beats takes numbers such as "7 9-12", or all.', { read: String(beats), right });
  const odd = wanted.find((n) => !numbers.includes(n));
  if (odd !== undefined) throw badUsage(`There is no beat ${odd}. Right: ${right}.`, { read: String(beats), right });
  return [...new Set(wanted)].sort((a, b) => a - b);
};

export const picturesIn = (flags: Asked["flags"], plan: Plan): PicturesAsked => ({
  beats: beatsIn(flags, plan),
  dark: flags.dark === true,
});

/** The names of the files that are wanted; undefined where all are. */
export const onlyIn = ({ only }: Asked["flags"], names: readonly string[]): readonly string[] | undefined => {
  if (only === undefined) return undefined;
  const wanted = String(only)
    .split(/[\s,]+/)
    .filter((name) => name !== "");
  const right = `names of this pack's files: ${names.join(", ")}`;
  const odd = wanted.find((name) => !names.includes(name));
  if (odd !== undefined) throw badUsage(`There is no ${printable(odd)} in this pack.`, { read: odd, right });
  if (wanted.length === 0) throw badUsage("--only takes names of files.", { read: "--only", right });
  return wanted;
};
