import type { Technique } from "./deduction.ts";
import { clueCases, clueForces } from "./techniques/clue-cases.ts";
import { hiddenPair, hiddenTriple } from "./techniques/hidden-set.ts";
import { houseCases } from "./techniques/house-cases.ts";
import { jointCases } from "./techniques/joint-cases.ts";
import { lastCell } from "./techniques/last-cell.ts";
import { locked } from "./techniques/locked.ts";
import { nakedPair, nakedQuad, nakedTriple } from "./techniques/naked-set.ts";
import { onlyDigit } from "./techniques/only-digit.ts";
import { onlyPlace } from "./techniques/only-place.ts";
import { onlyPlaceByClues } from "./techniques/only-place-by-clues.ts";
import { seenEverywhere } from "./techniques/seen-everywhere.ts";
import { smallerGridLeaves } from "./techniques/smaller-grid-leaves.ts";
import { sumsLeft } from "./techniques/sums-left.ts";

/** Every way of reasoning in the order of the ladder: what comes first is preferred where two say the same. */
export const techniques: readonly Technique[] = [
  lastCell,
  onlyPlace,
  onlyDigit,
  clueForces,
  smallerGridLeaves,
  locked,
  clueCases,
  onlyPlaceByClues,
  nakedPair,
  hiddenPair,
  nakedTriple,
  seenEverywhere,
  sumsLeft,
  jointCases,
  hiddenTriple,
  nakedQuad,
  houseCases,
];
