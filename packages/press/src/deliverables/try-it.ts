import type { PageData } from "../page/page-data.ts";
import { pageDataOf } from "../page/page-data-of.ts";
import { pageOf } from "../page/page-of.ts";
import type { Deliverable, Show } from "./show.ts";

/** The page says "by"; a setter whose puzzle was changed is named with a word on that. */
const dataOf = ({ board, isChanged }: Show): PageData => {
  const data = pageDataOf(board);
  if (!isChanged) return data;
  return { ...data, setters: data.setters.map((setter) => ({ ...setter, name: `${setter.name} (changed since)` })) };
};

/** The page on which the audience tries the puzzle; no solution is in it. */
export const tryIt: Deliverable = {
  name: "try-it.html",
  purpose: "The page to try the puzzle on: one file that opens anywhere and sends nothing.",
  needs: ["credit", "consent", "page"],
  make: (show, { page }) => pageOf(page, dataOf(show)),
};
