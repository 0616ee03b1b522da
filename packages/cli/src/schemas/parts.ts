import * as z from "zod";

export const cell = z.string().regex(/^r[1-9]\d*c[1-9]\d*$/);
export const digits = z.record(cell, z.int().min(0).max(31));
export const worth = z
  .enum(["needed", "redundant"])
  .describe("Redundant: without it alone there is still exactly one solution.");
