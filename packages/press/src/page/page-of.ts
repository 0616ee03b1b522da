import { escaped } from "../svg/element.ts";
import { packed } from "./packed.ts";
import type { PageData } from "./page-data.ts";

/** Stands in the built page where a puzzle's title and data belong. */
export const titleMark = "__solvewright_title__";
export const dataMark = "__solvewright_puzzle__";
const marks = new RegExp(`${titleMark}|${dataMark}`, "g");

/** The built page with a puzzle put in: one HTML file. */
export const pageOf = (template: string, data: PageData): string => {
  if (!template.includes(dataMark)) throw new Error("this is no built try-it page");
  // In one go, since a title may hold a mark itself.
  return template.replace(marks, (mark) =>
    mark === dataMark ? packed(JSON.stringify(data)) : escaped(data.puzzle.title),
  );
};
