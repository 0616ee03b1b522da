import { capital, counted } from "@solvewright/engine";
import type { CheckShown } from "../app/state.ts";

/** "One cell is not right yet." */
export const wrongSaid = (wrong: number): string =>
  `${capital(counted(wrong))} ${wrong === 1 ? "cell is" : "cells are"} not right yet.`;

export const whereSaid = (wrong: number): string => `${wrong === 1 ? "It is" : "They are"} crossed on the board.`;

/** What a check says: how many, never which. */
export const checkSaid = ({ wrong, settled, open }: CheckShown): string => {
  if (wrong.length > 0) return wrongSaid(wrong.length);
  if (settled === 0) return "Nothing is settled yet.";
  if (open === 0) return "Every digit is in its place.";
  return settled === 1 ? "The one digit you settled is right." : `All ${counted(settled)} digits so far are right.`;
};

/** The time of solving: "34 minutes", "1 hour 5 minutes", "50 seconds". */
export const spanSaid = (ms: number): string => {
  const count = (many: number, what: string): string => `${many} ${what}${many === 1 ? "" : "s"}`;
  const minutes = Math.round(ms / 60_000);
  if (minutes < 1) return count(Math.max(1, Math.round(ms / 1000)), "second");
  if (minutes < 60) return count(minutes, "minute");
  const rest = minutes % 60;
  return `${count(Math.floor(minutes / 60), "hour")}${rest > 0 ? ` ${count(rest, "minute")}` : ""}`;
};

export const stuckSaid = "Nothing plain follows from here. Try a digit and see where it leads.";
export const noHelpSaid: Readonly<Record<"starting" | "unsound" | "gone", string>> = {
  starting: "Help is on its way.",
  unsound: "Help stays out of this one: some of its rules are kept by you alone.",
  gone: "This browser is too old for the help. The board works all the same.",
};
