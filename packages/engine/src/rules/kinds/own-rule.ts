import { has } from "../../board/digits.ts";
import { ownDrawing } from "../../marks/own.ts";
import { centres } from "../../marks/points.ts";
import type { Point } from "../../marks/shape.ts";
import type { State } from "../../terms/term.ts";
import { type OwnBody, ownBody } from "../bodies/own.ts";
import { cellsAt } from "../cells.ts";
import { type Bound, faulty, type Kind } from "../contract.ts";

interface OwnRule extends Bound {
  readonly says: string;
  readonly rows: readonly (readonly number[])[] | undefined;
  /** The beginnings of the rows, as text. */
  readonly begun: ReadonlySet<string>;
  readonly drawn: "line" | "area" | "dots";
  readonly points: readonly Point[];
}

/** How far a row has been read: the digits so far as text, so that equal beginnings are one state. */
const readOn = (begun: ReadonlySet<string>, read: State, digit: number): string | undefined => {
  const further = read === "" ? `${digit}` : `${read} ${digit}`;
  return begun.has(further) ? further : undefined;
};

const beginnings = (rows: readonly (readonly number[])[]): ReadonlySet<string> =>
  new Set(rows.flatMap((row) => row.map((_, k) => row.slice(0, k + 1).join(" "))));

export const ownRule: Kind<OwnBody, OwnRule> = {
  name: "own-rule",
  body: ownBody,
  resolve: ({ says, cells: places = [], drawn = "area", allows: rows }, setting) => {
    const cells = cellsAt(setting, places);
    const fit = (row: readonly number[]): boolean => row.every((digit, k) => has(setting.domains[cells[k]!]!, digit));
    if (rows && !rows.some(fit))
      return faulty({
        at: ["allows"],
        read: rows.length === 1 ? "1 row" : `${rows.length} rows`,
        right: "a row whose digits its cells can hold",
      });
    return { cells, says, rows, begun: beginnings(rows ?? []), drawn, points: centres(places) };
  },
  scopes: ({ cells, rows, begun }) =>
    rows ? [{ cells, start: "", next: (read, digit) => readOn(begun, read, digit), ok: () => true }] : [],
  terms: ({ id, cells, rows }) => (rows ? [{ term: "table", owner: id, cells, rows }] : []),
  marks: ({ id, points, drawn }) => ownDrawing(drawn, points, id.split("/")[1]!),
  words: ({ says, cells }) => ({
    rule: says,
    title: "The setter's own rule",
    noun: "setter's own rule",
    plural: "setter's own rules",
    at: cells,
    holds: "obey the setter's own rule",
  }),
  relabels: "none",
  leftOut: ({ rows }) => rows === undefined,
};
