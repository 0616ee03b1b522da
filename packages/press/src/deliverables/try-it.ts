import type { PageData, ShowData } from "../page/page-data.ts";
import { pageDataOf } from "../page/page-data-of.ts";
import { pageOf } from "../page/page-of.ts";
import { momentsOf } from "./moments.ts";
import type { Deliverable, Show } from "./show.ts";

/** The video, once there is one that cells lead to. */
const shownIn = (show: Show): ShowData | undefined => {
  const moments = momentsOf(show);
  return moments && { name: show.board.puzzle.title, ...(show.date ? { date: show.date } : {}), moments };
};

/** The page says "by"; a setter whose puzzle was changed is named with a word on that. */
const dataOf = (show: Show): PageData => {
  const data = pageDataOf(show.board, shownIn(show));
  if (!show.isChanged) return data;
  return { ...data, setters: data.setters.map((setter) => ({ ...setter, name: `${setter.name} (changed since)` })) };
};

/** The page on which the audience tries the puzzle; no solution is in it. */
export const tryIt: Deliverable = {
  name: "try-it.html",
  purpose: "The page to try the puzzle on: one file that opens anywhere and sends nothing.",
  needs: ["credit", "consent", "page"],
  make: (show, { page }) => pageOf(page, dataOf(show)),
};
