import { counted } from "@solvewright/engine";

/** "one minute", "two minutes". */
export const plural = (count: number, noun: string): string => `${counted(count)} ${noun}${count === 1 ? "" : "s"}`;
