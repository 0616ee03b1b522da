import type { Plan } from "@solvewright/engine";
import { badUsage } from "./faults.ts";

/** The beat of a running order that a flag names; its number counts the rules' beats too. */
export const beatIn = (flag: string, value: string, plan: Plan): number => {
  const beats = plan.acts.flatMap((act) => act.beats.map(({ n }) => n));
  const [first, last] = [beats[0] ?? 1, beats.at(-1) ?? 1];
  const beat = Number(value);
  if (Number.isInteger(beat) && beat >= first && beat <= last) return beat;
  const right = `a beat of the running order, ${first} to ${last}`;
  throw badUsage(`${flag} takes ${right}, not ${value}.`, { read: `${flag} ${value}`, right });
};
