import type { Board } from "../board/board.ts";
import type { Knowledge } from "../board/knowledge.ts";
import { gather } from "../deduce/gather.ts";
import { techniques } from "../deduce/registry.ts";

const newcomers = techniques.filter(({ level }) => level === 1);

/** Cells that a newcomer's step settles. */
export const openAt = (known: Knowledge, board: Board): number =>
  new Set(gather(known, board, newcomers).flatMap(({ places }) => [...places.keys()])).size;
