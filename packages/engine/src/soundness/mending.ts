import type { Board } from "../board/board.ts";
import type { Clash } from "../search/clash.ts";
import type { Growing } from "./growing.ts";
import type { Mend } from "./mend.ts";
import { mendingNone } from "./mend-none.ts";
import { mendingSeveral } from "./mend-several.ts";
import type { Verdict } from "./verdict.ts";

/** A handful of mends of a board with this verdict, those that change least first; none where it is sound. `clash`: what is known of one without a solution. */
export function* mending(board: Board, verdict: Verdict, clash?: Clash): Growing<Mend> {
  if (verdict === "one") return [];
  return yield* verdict === "several" ? mendingSeveral(board) : mendingNone(board, clash);
}
