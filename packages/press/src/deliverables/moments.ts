import type { MomentsData } from "../page/page-data.ts";
import { showTimes } from "../take/show-times.ts";
import type { Deliverable, Show } from "./show.ts";

/** When in the video each cell is settled, by its name: whole seconds, so that links never lead past what they show. */
export const cellTimes = (show: Show): Record<string, number> =>
  Object.fromEntries(
    [...(showTimes(show).moments ?? [])]
      .sort((a, b) => a[1] - b[1] || (a[0] < b[0] ? -1 : 1))
      .map(([cell, at]) => [cell, Math.floor(at + 1e-6)]),
  );

/** What the try-it page is told of the video; nothing before there is a take and a place to watch it. */
export const momentsOf = (show: Show): MomentsData | undefined => {
  const address = show.recorded?.address;
  return show.recorded?.take && address ? { address, cells: cellTimes(show) } : undefined;
};

export const moments: Deliverable = {
  name: "moments.json",
  purpose: "When in the video each cell was settled, in seconds.",
  needs: ["consent"],
  isFor: ({ recorded }) => recorded?.take !== undefined,
  make: (show) =>
    `${JSON.stringify({ ...(show.recorded?.address ? { address: show.recorded.address } : {}), cells: cellTimes(show) }, null, 2)}\n`,
};
