import { pageDataOf } from "../page/page-data-of.ts";
import { pageOf } from "../page/page-of.ts";
import type { Deliverable } from "./show.ts";

/** The page on which the audience tries the puzzle; no solution is in it. */
export const tryIt: Deliverable = {
  name: "try-it.html",
  purpose: "The page to try the puzzle on: one file that opens anywhere and sends nothing.",
  needs: ["credit", "consent", "page"],
  make: ({ board }, { page }) => pageOf(page, pageDataOf(board)),
};
