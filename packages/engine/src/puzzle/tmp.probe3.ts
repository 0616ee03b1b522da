// @ts-nocheck
import { readdirSync, readFileSync } from "node:fs";
import { fingerprint } from "./fingerprint.ts";
import { read } from "./read.ts";
import { schemaOf } from "./schema.ts";
import { inverse, mayTurn, turned, turns } from "./turn.ts";
import { write } from "./write.ts";

for (const f of ["kind-xv-x", "digits-03", "kind-own-rule-said", "overlap-01", "kind-clone", "digits-01"]) {
  const d = read(readFileSync("/work/shared/cases/" + f + ".puzzle.yaml", "utf8")).draft;
  console.log(write(d));
}
console.log(write(read(readFileSync("/work/shared/design/look/paper-mill.puzzle.yaml", "utf8")).draft));
for (const dir of ["/work/shared/cases/", "/work/shared/checks/published/", "/work/shared/design/look/"])
  for (const f of readdirSync(dir).filter((f) => f.endsWith("puzzle.yaml"))) {
    const { draft } = read(readFileSync(dir + f, "utf8"));
    const text = write(draft);
    const back = read(text);
    const sorted = (d) =>
      JSON.stringify({
        ...d,
        givens: [...d.givens].sort((a, b) => a[0] - b[0]),
        rules: [...d.rules].sort((a, b) => (a.id < b.id ? -1 : 1)),
      });
    if (
      back.problems.length ||
      sorted(back.draft) !== sorted(draft) ||
      fingerprint(draft) !== fingerprint(back.draft)
    ) {
      console.log("DIFF", f, back.problems);
      console.log(sorted(draft));
      console.log(sorted(back.draft));
    }
    for (const t of turns) {
      const norm = turned(draft, turns[0]);
      const a = turned(turned(draft, t), inverse(t));
      if (JSON.stringify(a) !== JSON.stringify(norm)) console.log("TURN", f, t.name);
      const re = read(write(turned(draft, t)));
      if (re.problems.length && mayTurn(draft, t)) console.log("TURNBAD", f, t.name, re.problems[0]);
    }
  }
console.log(JSON.stringify(schemaOf()).length, JSON.stringify(schemaOf()).slice(0, 1500));
