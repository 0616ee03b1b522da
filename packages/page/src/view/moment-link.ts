import { clock } from "@solvewright/press";
import type { Ground } from "../solve/ground.ts";
import { el } from "./el.ts";
import { outside } from "./outside.ts";

/** Where in the show the first of these cells was settled: seconds, and what leads there. */
const momentOf = ({ data }: Ground, cells: readonly string[]) => {
  const moments = data.show?.moments;
  const times = cells.flatMap((cell) => moments?.cells[cell] ?? []);
  if (!moments || times.length === 0) return undefined;
  const seconds = Math.floor(Math.min(...times));
  return { seconds, address: moments.address.replace("{seconds}", String(seconds)) };
};

/** A link into the show, where the page goes with a take of it. */
export const momentLink = (
  ground: Ground,
  cells: readonly string[],
  said: (time: string) => string,
  className: string,
): HTMLElement | undefined => {
  const moment = momentOf(ground, cells);
  const link = moment && outside(moment.address);
  return link && el("a", { ...link, class: className }, said(clock(moment.seconds)));
};
