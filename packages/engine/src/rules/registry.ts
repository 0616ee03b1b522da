import type { Kind } from "./contract.ts";
import { allBarsShown } from "./kinds/all-bars-shown.ts";
import { allDotsShown } from "./kinds/all-dots-shown.ts";
import { allXvShown } from "./kinds/all-xv-shown.ts";
import { antiKing } from "./kinds/anti-king.ts";
import { antiKnight } from "./kinds/anti-knight.ts";
import { arrow } from "./kinds/arrow.ts";
import { betweenLine } from "./kinds/between-line.ts";
import { cage } from "./kinds/cage.ts";
import { clone } from "./kinds/clone.ts";
import { consecutiveBar } from "./kinds/consecutive-bar.ts";
import { countingCircles } from "./kinds/counting-circles.ts";
import { diagonals } from "./kinds/diagonals.ts";
import { disjointGroups } from "./kinds/disjoint-groups.ts";
import { doubleArrow } from "./kinds/double-arrow.ts";
import { entropicLine } from "./kinds/entropic-line.ts";
import { even } from "./kinds/even.ts";
import { extraRegion } from "./kinds/extra-region.ts";
import { fortress } from "./kinds/fortress.ts";
import { frameSum } from "./kinds/frame-sum.ts";
import { greaterThan } from "./kinds/greater-than.ts";
import { indexLine } from "./kinds/index-line.ts";
import { kropkeBlack } from "./kinds/kropke-black.ts";
import { kropkeWhite } from "./kinds/kropke-white.ts";
import { littleKiller } from "./kinds/little-killer.ts";
import { localMaximum } from "./kinds/local-maximum.ts";
import { localMinimum } from "./kinds/local-minimum.ts";
import { lockoutLine } from "./kinds/lockout-line.ts";
import { magicSquare } from "./kinds/magic-square.ts";
import { modularLine } from "./kinds/modular-line.ts";
import { nabner } from "./kinds/nabner.ts";
import { nonConsecutive } from "./kinds/non-consecutive.ts";
import { numberedRoom } from "./kinds/numbered-room.ts";
import { odd } from "./kinds/odd.ts";
import { oneOf } from "./kinds/one-of.ts";
import { outsideDigits } from "./kinds/outside-digits.ts";
import { ownRule } from "./kinds/own-rule.ts";
import { palindrome } from "./kinds/palindrome.ts";
import { parityLine } from "./kinds/parity-line.ts";
import { productCage } from "./kinds/product-cage.ts";
import { progression } from "./kinds/progression.ts";
import { quadruple } from "./kinds/quadruple.ts";
import { regionSumLine } from "./kinds/region-sum-line.ts";
import { renban } from "./kinds/renban.ts";
import { sameDigits } from "./kinds/same-digits.ts";
import { sameSum } from "./kinds/same-sum.ts";
import { sandwich } from "./kinds/sandwich.ts";
import { skyscraper } from "./kinds/skyscraper.ts";
import { slowThermometer } from "./kinds/slow-thermometer.ts";
import { sumArea } from "./kinds/sum-area.ts";
import { sumLine } from "./kinds/sum-line.ts";
import { thermometer } from "./kinds/thermometer.ts";
import { whisper } from "./kinds/whisper.ts";
import { windows } from "./kinds/windows.ts";
import { xSum } from "./kinds/x-sum.ts";
import { xvV } from "./kinds/xv-v.ts";
import { xvX } from "./kinds/xv-x.ts";
import { zipperLine } from "./kinds/zipper-line.ts";

/** Every kind of rule, in the order of docs/format.md. */
export const kinds: readonly Kind[] = [
  even,
  odd,
  oneOf,
  localMaximum,
  localMinimum,
  fortress,
  countingCircles,
  kropkeBlack,
  kropkeWhite,
  allDotsShown,
  consecutiveBar,
  allBarsShown,
  xvX,
  xvV,
  allXvShown,
  greaterThan,
  thermometer,
  slowThermometer,
  arrow,
  doubleArrow,
  palindrome,
  renban,
  whisper,
  betweenLine,
  lockoutLine,
  regionSumLine,
  sumLine,
  modularLine,
  entropicLine,
  parityLine,
  zipperLine,
  nabner,
  progression,
  cage,
  productCage,
  sumArea,
  extraRegion,
  clone,
  sameSum,
  sameDigits,
  quadruple,
  magicSquare,
  sandwich,
  littleKiller,
  xSum,
  skyscraper,
  numberedRoom,
  outsideDigits,
  frameSum,
  indexLine,
  diagonals,
  antiKnight,
  antiKing,
  nonConsecutive,
  disjointGroups,
  windows,
  ownRule,
];

/** The kind of that name among these (all that there are where not said). */
export const kindNamed = (name: string, among: readonly Kind[] = kinds): Kind | undefined =>
  among.find((kind) => kind.name === name);
