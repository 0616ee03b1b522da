import type { Phrase } from "../phrase.ts";
import { clue, joint, sums } from "./clues.ts";
import { eitherWay } from "./either-way.ts";
import { fish, leftovers } from "./patterns.ts";
import { byRelation, relation } from "./relations.ts";
import { hiddenSet, locked, nakedSet, seenEverywhere, smallerGridLeaves, visibleBlock } from "./removals.ts";
import { lastCell, onlyDigit, onlyPlace, onlyPlaceByClues } from "./singles.ts";
import { contradiction, whatIf } from "./what-if.ts";

/** Small reasons may have lost the digit that is seen: then a clue alone leaves no room for it. */
const seenOrJoint: Phrase = (telling) => (telling.deduction.because.facts.size > 0 ? visibleBlock : joint)(telling);

/** How each technique is said; a test holds this list against the registry of techniques. */
export const phrases: Readonly<Record<string, Phrase>> = {
  "last-cell": lastCell,
  "only-place": onlyPlace,
  "only-digit": onlyDigit,
  "clue-forces": clue,
  "smaller-grid-leaves": smallerGridLeaves,
  locked,
  "clue-cases": clue,
  "only-place-by-clues": onlyPlaceByClues,
  "naked-pair": nakedSet,
  "hidden-pair": hiddenSet,
  "naked-triple": nakedSet,
  "seen-everywhere": seenEverywhere,
  "sums-left": sums,
  "house-cases": joint,
  "joint-cases": joint,
  "hidden-triple": hiddenSet,
  "naked-quad": nakedSet,
  "x-wing": fish,
  swordfish: fish,
  leftovers,
  relation,
  "by-relation": byRelation,
  "equal-sets": leftovers,
  "simple-colouring": eitherWay,
  "xy-wing": eitherWay,
  "xyz-wing": eitherWay,
  "w-wing": eitherWay,
  "remote-pair": eitherWay,
  "either-way": eitherWay,
  "visible-block": seenOrJoint,
  contradiction,
  "what-if": whatIf,
  "long-what-if": whatIf,
};
