import { counting } from "./counting.ts";
import { growth } from "./growth.ts";
import type { Measure } from "./measure.ts";
import { page } from "./page.ts";
import { plan } from "./plan.ts";
import { allSeventeen } from "./seventeen.ts";
import { soundness } from "./soundness.ts";
import { start } from "./start.ts";
import { voice } from "./voice.ts";
import { why } from "./why.ts";

export const measures: readonly Measure[] = [soundness, allSeventeen, counting, growth, plan, why, voice, page, start];
