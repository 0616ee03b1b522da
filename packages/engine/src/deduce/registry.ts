import type { Technique } from "./deduction.ts";
import { clueCases, clueForces } from "./techniques/clue-cases.ts";
import { eitherWay, remotePair, simpleColouring, wWing, xyWing, xyzWing } from "./techniques/either-way.ts";
import { swordfish, xWing } from "./techniques/fish.ts";
import { hiddenPair, hiddenTriple } from "./techniques/hidden-set.ts";
import { houseCases } from "./techniques/house-cases.ts";
import { jointCases } from "./techniques/joint-cases.ts";
import { lastCell } from "./techniques/last-cell.ts";
import { equalSets, leftovers } from "./techniques/leftovers.ts";
import { locked } from "./techniques/locked.ts";
import { nakedPair, nakedQuad, nakedTriple } from "./techniques/naked-set.ts";
import { onlyDigit } from "./techniques/only-digit.ts";
import { onlyPlace } from "./techniques/only-place.ts";
import { onlyPlaceByClues } from "./techniques/only-place-by-clues.ts";
import { byRelation, relations } from "./techniques/relations.ts";
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
  leftovers,
  relations,
  sumsLeft,
  jointCases,
  byRelation,
  hiddenTriple,
  nakedQuad,
  houseCases,
  xWing,
  equalSets,
  swordfish,
  simpleColouring,
  xyWing,
  xyzWing,
  wWing,
  remotePair,
  eitherWay,
];
