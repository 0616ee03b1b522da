import { type Board, listOf } from "@solvewright/engine";
import { type Fixed, leftoversOf } from "../../packages/engine/src/search/leftovers.ts";
import { modelOf } from "../../packages/engine/src/search/model.ts";
import type { Automaton, State, Sum, Term } from "../../packages/engine/src/terms/term.ts";

const listed = (items: readonly (number | string)[]): string => `[${items.join(",")}]`;
const names = (cells: readonly number[]): string => listed(cells.map((cell) => `c${cell}`));

const tableOf = (cells: readonly number[], rows: readonly (readonly number[])[]): string =>
  `gecode_table_int(${names(cells)},${listed(rows.flat())})`;

const linear = (cells: readonly number[], weights: readonly number[], equals: number): string =>
  `int_lin_eq(${listed(weights)},${names(cells)},${equals})`;

const sumOf = ({ cells, weights, equals }: Sum): string => linear(cells, weights ?? cells.map(() => 1), equals);

/** States of the reading are told apart by how many cells were read; state 1 is the start, 0 the dead end. */
const regular = (term: Automaton, domains: Int32Array): string => {
  const { cells, start, next, ok } = term;
  const most = Math.max(...cells.map((cell) => 31 - Math.clz32(domains[cell]!)));
  const table: number[][] = [];
  let count = 1;
  let layer = new Map<State, number>([[start, 1]]);
  for (const [index, cell] of cells.entries()) {
    const after = new Map<State, number>();
    for (const [state, from] of layer) {
      const row = new Array<number>(most + 1).fill(0);
      for (const digit of listOf(domains[cell] as never)) {
        const to = next(state, digit, index);
        if (to === undefined || (index === cells.length - 1 && !ok(to))) continue;
        if (!after.has(to)) after.set(to, ++count);
        row[digit] = after.get(to)!;
      }
      table[from] = row;
    }
    layer = after;
  }
  // Its symbols start at 1, so every digit is one more there.
  const rows = Array.from({ length: count }, (_, k) => table[k + 1] ?? new Array<number>(most + 1).fill(0));
  const shifted = listed(cells.map((_, k) => `s_${cells[k]}`));
  return `gecode_regular(${shifted},${count},${most + 1},${listed(rows.flat())},1,${listed([...layer.values()])
    .replace("[", "{")
    .replace("]", "}")})`;
};

const pairRows = (term: Extract<Term, { term: "pair" }>): number[][] =>
  term.allowed.flatMap((seconds, first) => (seconds ? listOf(seconds).map((second) => [first, second]) : []));

/** A term as constraints; undefined where Gecode has no word for it that we use. */
const constraintsOf = (term: Term, domains: Int32Array): string[] | undefined => {
  const { cells } = term;
  const neighbours = cells.slice(1).map((cell, k): [number, number] => [cells[k]!, cell]);
  switch (term.term) {
    case "sum":
      return [sumOf(term)];
    case "pair":
      return [tableOf(cells, pairRows(term))];
    case "order":
      return neighbours.map(([low, high]) => `${term.strict ? "int_lt" : "int_le"}(c${low},c${high})`);
    case "equal":
      return neighbours.map(([a, b]) => `int_eq(c${a},c${b})`);
    case "table":
      return [tableOf(cells, term.rows)];
    case "automaton":
      return [regular(term, domains)];
    case "different":
      return [`all_different_int(${names(cells)}) :: domain`];
    default:
      return undefined;
  }
};

/**
 * The board as FlatZinc for Gecode; what has failed most goes first. Sums are told what whole cages leave over, as our
 * own search is. Undefined where some term can't be said.
 */
export const flatzincOf = (board: Board): string | undefined => {
  const model = modelOf(board);
  const { domains } = model;
  const said = board.terms.map((term) => constraintsOf(term, domains));
  if (said.includes(undefined)) return undefined;
  const cages = board.terms.flatMap((term): Fixed[] =>
    term.term === "sum" && !term.weights ? [{ cells: term.cells, sum: term.equals }] : [],
  );
  const leftovers = leftoversOf(model, cages).map(({ cells, weights, equals }) => linear(cells, weights, equals));
  const houses = board.houses.filter(({ rule }) => rule === undefined);
  const different = houses.map(({ cells }) => `all_different_int(${names(cells)}) :: domain`);
  const read = new Set(board.terms.flatMap((term) => (term.term === "automaton" ? term.cells : [])));
  const cells = [...domains.keys()];
  return [
    ...cells.map((cell) => `var {${listOf(domains[cell] as never).join(",")}}: c${cell} :: output_var;`),
    ...[...read].map((cell) => `var 1..32: s_${cell};`),
    ...[...read].map((cell) => `constraint int_lin_eq([1,-1],[s_${cell},c${cell}],1) :: domain;`),
    ...[...different, ...said.flatMap((list) => list!), ...leftovers].map((constraint) => `constraint ${constraint};`),
    `solve :: int_search(${names(cells)},dom_w_deg,indomain_min,complete) satisfy;`,
  ].join("\n");
};
