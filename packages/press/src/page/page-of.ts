import { escaped } from "../svg/element.ts";
import { folded } from "./folded.ts";
import type { PageData } from "./page-data.ts";

/** Stands in the built page where a puzzle's title and data belong. */
export const titleMark = "__solvewright_title__";
export const dataMark = "__solvewright_puzzle__";
const marks = new RegExp(`${titleMark}|${dataMark}`, "g");

/** Folded JSON that can stand in a script element: nothing in it ends the element or begins a comment. */
const embedded = (data: PageData): string => JSON.stringify(folded(data)).replaceAll("<", "\\u003c");

/** The built page with a puzzle put in: one HTML file. */
export const pageOf = (template: string, data: PageData): string => {
  if (!template.includes(dataMark)) throw new Error("this is no built try-it page");
  // In one go, since a title may hold a mark itself.
  return template.replace(marks, (mark) => (mark === dataMark ? embedded(data) : escaped(data.puzzle.title)));
};
