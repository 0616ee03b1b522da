import { type Digits, has, listOf } from "../../board/digits.ts";
import { growingDiscs } from "../../marks/discs.ts";
import { counted } from "../../speech/english/counts.ts";
import { domainsIn } from "../area.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { writePath } from "../bodies/path-text.ts";
import { faulty, type Kind } from "../contract.ts";
import { domainsText } from "../in-words.ts";
import { endsOf, type Line, lineOf, windowsOf } from "../line.ts";
import { onceIn } from "../once.ts";

interface Progression extends Line {
  /** Every one that its cells can hold. */
  readonly rows: readonly (readonly number[])[];
}

const rowsOf = (domains: readonly Digits[]): number[][] => {
  if (domains.length > 32) return [];
  return listOf(domains[0]!).flatMap((first) =>
    listOf(domains[1]!)
      .filter((second) => second !== first)
      .map((second) => domains.map((_, k) => first + k * (second - first)))
      .filter((row) => row.every((digit, k) => digit >= 0 && digit < 32 && has(domains[k]!, digit))),
  );
};

export const progression: Kind<PathBody, Progression> = {
  name: "progression",
  body: paths({ least: 3 }),
  resolve: ({ cells: places }, setting) => {
    const line = lineOf(places, setting);
    const domains = domainsIn(setting, line);
    const rows = onceIn(setting, `progression ${domains}`, () => rowsOf(domains));
    if (rows.length > 0) return { ...line, rows };
    const right = `cells that can hold a progression of ${counted(places.length)} digits; these have ${domainsText(domains)}`;
    return faulty({ at: ["cells"], read: writePath(places), right });
  },
  scopes: ({ cells }) =>
    windowsOf(cells, 3).map((three) => ({
      cells: three,
      holds: ([a, b, c]) => a !== b && b! - a! === c! - b!,
    })),
  terms: ({ id, cells, rows }) => [{ term: "table", owner: id, cells, rows }],
  marks: ({ points }) => growingDiscs(points),
  words: ({ cells }) => ({
    rule: "Digits on a progression line rise by the same amount at every step, or fall by it. Either end may be the lower one.",
    title: "Progression lines",
    noun: "progression line",
    plural: "progression lines",
    at: endsOf(cells),
    holds: "change by the same amount at every step",
  }),
  alsoSaid: ["progression", "arithmetic"],
  relabels: "mirror",
};
