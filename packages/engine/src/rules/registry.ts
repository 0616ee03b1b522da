import type { Kind } from "./contract.ts";
import { allBarsShown } from "./kinds/all-bars-shown.ts";
import { allDotsShown } from "./kinds/all-dots-shown.ts";
import { allXvShown } from "./kinds/all-xv-shown.ts";
import { antiKing } from "./kinds/anti-king.ts";
import { antiKnight } from "./kinds/anti-knight.ts";
import { arrow } from "./kinds/arrow.ts";
import { cage } from "./kinds/cage.ts";
import { clone } from "./kinds/clone.ts";
import { consecutiveBar } from "./kinds/consecutive-bar.ts";
import { countingCircles } from "./kinds/counting-circles.ts";
import { even } from "./kinds/even.ts";
import { extraRegion } from "./kinds/extra-region.ts";
import { fortress } from "./kinds/fortress.ts";
import { greaterThan } from "./kinds/greater-than.ts";
import { kropkeBlack } from "./kinds/kropke-black.ts";
import { kropkeWhite } from "./kinds/kropke-white.ts";
import { localMaximum } from "./kinds/local-maximum.ts";
import { localMinimum } from "./kinds/local-minimum.ts";
import { magicSquare } from "./kinds/magic-square.ts";
import { nonConsecutive } from "./kinds/non-consecutive.ts";
import { odd } from "./kinds/odd.ts";
import { oneOf } from "./kinds/one-of.ts";
import { ownRule } from "./kinds/own-rule.ts";
import { productCage } from "./kinds/product-cage.ts";
import { quadruple } from "./kinds/quadruple.ts";
import { sameDigits } from "./kinds/same-digits.ts";
import { sameSum } from "./kinds/same-sum.ts";
import { sumArea } from "./kinds/sum-area.ts";
import { xvV } from "./kinds/xv-v.ts";
import { xvX } from "./kinds/xv-x.ts";

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
  arrow,
  cage,
  productCage,
  sumArea,
  extraRegion,
  clone,
  sameSum,
  sameDigits,
  quadruple,
  magicSquare,
  antiKnight,
  antiKing,
  nonConsecutive,
  ownRule,
];

/** The kind of that name among these (all that there are where not said). */
export const kindNamed = (name: string, among: readonly Kind[] = kinds): Kind | undefined =>
  among.find((kind) => kind.name === name);
