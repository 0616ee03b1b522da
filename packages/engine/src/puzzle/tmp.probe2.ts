// @ts-nocheck
import { readFileSync } from "node:fs";
import * as F from "../rules/feasible.ts";
import { kinds } from "../rules/registry.ts";
import { settingOf } from "../rules/setting.ts";
import { read } from "./read.ts";

for (const f of [
  "killer-01",
  "killer-01",
  "killer-02",
  "kind-magic-square",
  "kind-renban",
  "digits-03",
  "kind-windows",
  "several-05",
]) {
  const t = readFileSync("/work/shared/cases/" + f + ".puzzle.yaml", "utf8");
  const t0 = performance.now();
  const r = read(t);
  const t1 = performance.now();
  let res = 0,
    fe = 0;
  const s = settingOf(r.draft, kinds);
  for (const e of r.draft.rules) {
    const k = kinds.find((k) => k.name === e.kind);
    const a = performance.now();
    const i = { ...k.resolve(e.body, s), id: e.id };
    const b = performance.now();
    if (!k.wholeGrid) F.isFeasible(k.scopes(i), s);
    const c = performance.now();
    res += b - a;
    fe += c - b;
    if (c - a > 5) console.log("   ", e.id, (b - a).toFixed(1), (c - b).toFixed(1));
  }
  console.log(f, (t1 - t0).toFixed(1), "resolve", res.toFixed(1), "feasible", fe.toFixed(1));
}
