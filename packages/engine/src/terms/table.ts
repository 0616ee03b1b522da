import { type Digits, has } from "../board/digits.ts";
import type { Domains, Propagator, Table, TermMeaning } from "./term.ts";

const propagator = ({ cells, rows }: Table): Propagator => {
  const usable = rows.filter((row) => row.length === cells.length);
  const kept = new Int32Array(cells.length);
  const fits = (row: readonly number[], domains: Domains): boolean =>
    row.every((digit, k) => has(domains.at(cells[k]!), digit));
  return (domains) => {
    kept.fill(0);
    let any = false;
    for (const row of usable) {
      if (!fits(row, domains)) continue;
      any = true;
      for (let k = 0; k < row.length; k++) kept[k]! |= 1 << row[k]!;
    }
    return any && cells.every((cell, k) => domains.keep(cell, kept[k] as Digits));
  };
};

export const table: TermMeaning<Table> = { term: "table", strength: "full", propagator };
