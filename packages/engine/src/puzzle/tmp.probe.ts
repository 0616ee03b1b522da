// @ts-nocheck
import { readdirSync, readFileSync } from "node:fs";
import { read } from "./read.ts";

const bad = "/work/shared/cases/bad/";
for (const f of readdirSync(bad).filter((f) => f.endsWith(".yaml"))) {
  const r = read(readFileSync(bad + f, "utf8"));
  console.log(`--- ${f}   WHY ${readFileSync(bad + f.replace("puzzle.yaml", "why.txt"), "utf8").trim()}`);
  for (const p of r.problems) console.log(`   ${p.line}:${p.column} [${p.path}] read ${p.read} | right ${p.right}`);
  for (const p of r.remarks) console.log(`   REMARK ${p.line}:${p.column} ${p.read} | ${p.right}`);
}
for (const dir of ["/work/shared/cases/", "/work/shared/checks/published/", "/work/shared/design/look/"])
  for (const f of readdirSync(dir).filter((f) => f.endsWith("puzzle.yaml"))) {
    const t = performance.now();
    const r = read(readFileSync(dir + f, "utf8"));
    const ms = performance.now() - t;
    if (r.problems.length || r.remarks.length || ms > 100)
      console.log(
        "===",
        f,
        ms.toFixed(0),
        [...new Set([...r.problems, ...r.remarks].map((p) => `${p.line}:${p.column} ${p.read} | ${p.right}`))].slice(
          0,
          4,
        ),
      );
  }
