// @ts-nocheck
import { read } from "./read.ts";

const fill = (head, unit, tail = "") =>
  head + unit.repeat(Math.floor((65000 - head.length - tail.length) / unit.length)) + tail;
const H = (size, extra = "") => `puzzle: 1\ntitle: x\ngrids:\n  - { id: main, size: ${size}${extra} }\n`;
const H100 =
  "puzzle: 1\ntitle: x\ngrids:\n" +
  [0, 1, 2, 3]
    .flatMap((i) => [0, 1, 2, 3].map((j) => `  - { id: g${i}${j}, size: 25, at: r${i * 25 + 1}c${j * 25 + 1} }\n`))
    .join("");
const T = {
  brackets: "[".repeat(65000),
  dashes: "- ".repeat(32000),
  lists: fill("[", "[],", "]"),
  bad: fill(H(9) + "rules:\n  - renban: ", "q "),
  off: fill(H(9) + "rules:\n  - renban: ", "r99c99 "),
  mapdig: fill(
    H(25).replace(" }", "").replace("- {", "-").replace(/, /g, "\n    ").replace("  - id", "  - id") +
      "    regions: |\n",
    "      1\n",
  ),
  pic: fill(H(25) + "givens:\n  main: |\n", "    9999\n"),
  piclong: H(25) + "givens:\n  main: |\n    " + "x ".repeat(30000),
  digits: fill("puzzle: 1\ngrids:\n  - id: a\n    size: 25\n    digits: ", "77 "),
  dots: fill(H100 + "rules:\n", "  - all-dots-shown\n"),
  kings: H100 + "rules:\n" + "  - anti-king\n".repeat(50),
  dotsok: H100 + "rules:\n" + "  - all-dots-shown\n".repeat(50),
  magic: fill(H(9) + "rules:\n", "  - magic-square: { at: r1c1, size: 3 }\n"),
  cagebig: fill(H(25) + "rules:\n", "  - cage: { cells: r1c1-r1c25, sum: 325 }\n"),
  cage13: fill(H(25) + "rules:\n", "  - cage: { cells: r1c1-r1c13, sum: 400 }\n"),
  cagehuge: fill(
    H(25) + "rules:\n",
    "  - sum-area: { cells: " +
      Array.from({ length: 25 }, (_, k) => `r${k + 1}c1-r${k + 1}c25`).join(" ") +
      ", sum: 99999 }\n",
  ),
  product: fill(H(25) + "rules:\n", "  - product-cage: { cells: r1c1-r1c13, product: 9007199254740881 }\n"),
  product2: fill(H(25) + "rules:\n", "  - product-cage: { cells: r1c1-r1c9, product: 3628800 }\n"),
  renban: fill(H(25) + "rules:\n", "  - renban: r1c1-r1c25\n"),
  xsum: fill(H(25) + "rules:\n", "  - x-sum: { row: 1, from: left, sum: 999 }\n"),
  sky: fill(H(25) + "rules:\n", "  - skyscraper: { row: 1, from: left, sees: 25 }\n"),
  sand: fill(H(25) + "rules:\n", "  - sandwich: { row: 1, sum: 297 }\n"),
  room: fill(H(25) + "rules:\n", "  - numbered-room: { row: 1, from: left, digit: 25 }\n"),
  frame: fill(H(25) + "rules:\n", "  - frame-sum: { row: 1, from: left, sum: 299, over: 24 }\n"),
  od: fill(
    H(25) + "rules:\n",
    "  - outside-digits: { row: 1, from: left, digits: 1 2 3 4 5 6 7 8 9 10 11 12, within: 25 }\n",
  ),
  region: fill(H(25) + "rules:\n", "  - region-sum-line: r1c1-r1c25\n"),
  sumline: fill(H(25) + "rules:\n", "  - sum-line: { cells: r1c1-r1c25, sum: 13 }\n"),
  same: fill(H(25) + "rules:\n", "  - same-sum: { areas: [r1c1-r1c25, r2c1-r2c25] }\n"),
  samed: fill(H(25) + "rules:\n", "  - same-digits: { areas: [r1c1-r1c25, r2c1-r2c25] }\n"),
  clone: fill(H(25) + "rules:\n", "  - clone: { areas: [r1c1-r1c25, r2c1-r2c25] }\n"),
  circ: fill(H(25) + "rules:\n", "  - counting-circles: r1c1-r1c25 r2c1-r2c25\n"),
  circ2:
    H(25) +
    "rules:\n  - counting-circles: " +
    Array.from({ length: 25 }, (_, k) => `r${k + 1}c1-r${k + 1}c25`).join(" ") +
    "\n",
  nab: fill(H(25) + "rules:\n", "  - nabner: r1c1-r1c13\n"),
  prog: fill(H(25) + "rules:\n", "  - progression: r1c1-r1c25\n"),
  zip: fill(H(25) + "rules:\n", "  - zipper-line: r1c1-r1c25\n"),
  dbl: fill(H(25) + "rules:\n", "  - double-arrow: r1c1-r1c25\n"),
  mod: fill(H(25) + "rules:\n", "  - modular-line: { cells: r1c1-r1c25, by: 12 }\n"),
  ent: fill(H(24, ", regions: none") + "rules:\n", "  - entropic-line: r1c1-r1c24\n"),
  lock: fill(H(25) + "rules:\n", "  - lockout-line: { cells: r1c1-r1c25, by: 12 }\n"),
  betw: fill(H(25) + "rules:\n", "  - between-line: r1c1-r1c25\n"),
  idx: fill(H(25) + "rules:\n", "  - index-line: { row: 3 }\n"),
  extra: fill(H(25) + "rules:\n", "  - extra-region: r1c1-r1c25\n"),
  fort: fill(H(25) + "rules:\n", "  - fortress: r1c1-r1c25\n"),
  pal: fill(H(25) + "rules:\n", "  - palindrome: r1c1-r1c25\n"),
  arrow: fill(H(25) + "rules:\n", "  - arrow: { total: r1c1-r1c3, along: r2c3-r25c3 }\n"),
  whisper: fill(H(25) + "rules:\n", "  - whisper: {cells: r1c1-r1c25, by: 13}\n"),
  dotsall: fill(H100 + "rules:\n  - kropke-white: [", "r1c1 r1c2, ", "r1c1 r1c2]\n"),
  own: fill(
    H(9) + "rules:\n  - own-rule: { says: x, cells: r1c1-r1c9, allows: [",
    "1 2 3 4 5 6 7 8 9, ",
    "1 1 1 1 1 1 1 1 1] }\n",
  ),
  keys: fill("puzzle: 1\n", "aaa: 1\n"),
  uniq: "puzzle: 1\n" + Array.from({ length: 7000 }, (_, k) => `k${k}: 1\n`).join(""),
  grids: "puzzle: 1\ngrids:\n" + "  - { id: main, size: 25, at: r76c76 }\n".repeat(40),
  setters: fill("puzzle: 1\nsetter:\n", "  - { nme: x }\n"),
  anchors: fill("puzzle: 1\n", "- &a 1\n"),
  aliases: "puzzle: &a 1\nx: [" + "*a,".repeat(21000) + "]",
  nest: fill("puzzle: 1\nx: &a [", "[1,[2,[3]]],") + "]\ny: [" + "*a,".repeat(16) + "]",
  quote: 'title: "' + "\\x41".repeat(16000) + '"',
  tabs: fill("puzzle: 1\n", "\tx: 1\n"),
  ctrl: fill("title: ", "\u0001"),
  errs: fill("puzzle: 1\n", "a: @x\n"),
  toks: fill(H(9) + "givens:\n  cells: {", " r99c99: 1,") + "}\n",
  lk: fill(H(25) + "rules:\n", "  - little-killer: { cells: r1c1-r25c25, sum: 99999 }\n"),
  quad: fill(H(9) + "rules:\n", "  - quadruple: { at: r1c1, digits: 1 2 3 4 }\n"),
  kindq: fill(H(9) + "rules:\n", "  - kropke-blaak: r1c1\n"),
};
const only = process.argv[2];
for (const [n, t] of Object.entries(T)) {
  if (only && n !== only) continue;
  const s = performance.now();
  const r = read(t);
  const ms = performance.now() - s;
  if (ms > 300 || only)
    console.log(
      n,
      t.length,
      ms.toFixed(0) + " ms",
      r.problems.length,
      r.draft.rules.length,
      JSON.stringify(r.problems[0] ?? ""),
    );
}
