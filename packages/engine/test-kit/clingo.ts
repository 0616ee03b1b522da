import { createRequire } from "node:module";
import { type Digits, digitsOf, none } from "../src/board/digits.ts";
import { placeOf } from "../src/puzzle/canvas.ts";
import type { Grid, Puzzle } from "../src/puzzle/puzzle.ts";
import { oracles } from "./kind-files.ts";

/** What the outside oracle (the answer-set solver clingo) finds of a puzzle. */
export interface Seen {
  /** Up to the bound. */
  readonly count: number;
  /** There are no others. */
  readonly exact: boolean;
  /** Each the digits in the order of the cells, joined by commas; sorted. */
  readonly solutions: readonly string[];
  /** By `Cell`: the digits that occur in some solution; where the bound was met, in some solution at all still. */
  readonly possible: readonly Digits[];
}

interface Answer {
  readonly Result: string;
  readonly Error?: string;
  readonly Call: readonly { readonly Witnesses?: readonly { readonly Value: readonly string[] }[] }[];
  readonly Models: { readonly Number: number; readonly More: "yes" | "no" };
}
type Run = (program: string, models: number, options?: readonly string[]) => Answer;

let loaded: Promise<Run> | undefined;

/** It announces its start on the console. */
const load = async (): Promise<Run> => {
  const { init } = createRequire(import.meta.url)("clingo-wasm") as { init: () => Promise<Run> };
  const { info } = console;
  console.info = () => {};
  try {
    return await init();
  } finally {
    console.info = info;
  }
};

/** Up to so many models of a program. */
export const ask = async (program: string, models: number, options: readonly string[] = []): Promise<Answer> => {
  loaded ??= load();
  const run = await loaded;
  const answer = run(program, models, options);
  if (answer.Result === "ERROR") throw new Error(`${answer.Error}\n${program}`);
  return answer;
};

export const factsOf = (grid: Grid): string[] => {
  const facts = grid.digits.map((digit) => `digit("${grid.id}",${digit}).`);
  for (let k = 0; k < grid.size ** 2; k++) {
    const [row, column] = [Math.floor(k / grid.size), k % grid.size];
    const at = `${grid.row + row},${grid.column + column}`;
    const houses = [`row ${row}`, `column ${column}`, ...(grid.regions ? [`region ${grid.regions[k]}`] : [])];
    facts.push(`in("${grid.id}",${at}).`, ...houses.map((house) => `house("${grid.id}","${house}",${at}).`));
  }
  return facts;
};

/** Every cell of a grid holds one of the digits that all its grids have; rows, columns and regions repeat none. */
const base = (puzzle: Puzzle): string => {
  const all = [...new Set(puzzle.grids.flatMap(({ digits }) => digits))];
  const givens = [...puzzle.givens].map(([cell, digit]) => {
    const { row, column } = placeOf(puzzle.canvas.names[cell]!)!;
    return `:- not v(${row},${column},${digit}).`;
  });
  return [
    ...puzzle.grids.flatMap(factsOf),
    `any(${all.join(";")}).`,
    "cell(R,C) :- in(_,R,C).",
    "barred(R,C,D) :- in(G,R,C), any(D), not digit(G,D).",
    "{ v(R,C,D) : any(D), not barred(R,C,D) } = 1 :- active, cell(R,C).",
    ":- house(G,H,_,_), any(D), { v(R,C,D) : house(G,H,R,C) } > 1.",
    ...givens,
  ].join("\n");
};

const ownNames = ["v", "cell", "in", "house", "digit", "any", "barred", "active"];

/** The puzzle as a program of names of its own, which binds nothing unless `active` holds. */
const programOf = (puzzle: Puzzle, index: number): string => {
  const rules = puzzle.rules.map((entry, k) => oracles.get(entry.kind)!(entry, { puzzle, n: index * 1000 + k }));
  const binding = [base(puzzle), ...rules].join("\n").replace(/(^|[.\n]\s*):-/g, "$1:- active,");
  return binding.replace(new RegExp(`(?<![\\w"])(${ownNames.join("|")})(?![\\w"])`, "g"), `$1_${index}`);
};

/** One program whose models are the solutions of all these puzzles. */
export const together = (puzzles: readonly Puzzle[]): string => {
  const actives = puzzles.map((_, k) => `active_${k}`);
  return [
    `{ ${actives.join("; ")} } = 1.`,
    ...puzzles.map(programOf),
    ...puzzles.map((_, k) => `#show v_${k}/3.`),
  ].join("\n");
};

/** The digits by cell of each puzzle that a model or a set of consequences names. */
const readAtoms = (atoms: readonly string[], puzzles: readonly Puzzle[]): Map<number, Map<string, number[]>> => {
  const found = new Map<number, Map<string, number[]>>();
  for (const atom of atoms) {
    const [, puzzle, row, column, digit] = /^v_(\d+)\((\d+),(\d+),(\d+)\)$/.exec(atom)!.map(Number);
    const cells = found.get(puzzle!) ?? new Map<string, number[]>();
    found.set(puzzle!, cells);
    const name = `r${row}c${column}`;
    cells.set(name, [...(cells.get(name) ?? []), digit!]);
  }
  if ([...found.keys()].some((k) => k >= puzzles.length)) throw new Error("an answer about no puzzle");
  return found;
};

const modelsIn = (answer: Answer, puzzles: readonly Puzzle[]): string[][] => {
  const solutions = puzzles.map((): string[] => []);
  for (const { Value } of answer.Call.flatMap(({ Witnesses = [] }) => Witnesses))
    for (const [k, cells] of readAtoms(Value, puzzles))
      solutions[k]!.push(puzzles[k]!.canvas.names.map((name) => cells.get(name)!.join("")).join());
  return solutions.map((list) => list.sort());
};

const possibleIn = (solutions: readonly string[], cells: number): Digits[] => {
  const rows = solutions.map((solution) => solution.split(",").map(Number));
  return Array.from({ length: cells }, (_, cell) => digitsOf(rows.map((row) => row[cell]!)));
};

const exactly = (puzzle: Puzzle, solutions: readonly string[]): Seen => ({
  count: solutions.length,
  exact: true,
  solutions,
  possible: possibleIn(solutions, puzzle.canvas.names.length),
});

/** Digits that hold in some solution, without listing the solutions. */
const braves = async (puzzle: Puzzle): Promise<Digits[]> => {
  const answer = await ask(together([puzzle]), 0, ["--enum-mode=brave"]);
  const last = answer.Call.at(-1)?.Witnesses?.at(-1)?.Value ?? [];
  const cells = readAtoms(last, [puzzle]).get(0);
  return puzzle.canvas.names.map((name) => (cells ? digitsOf(cells.get(name) ?? []) : none));
};

const alone = async (puzzle: Puzzle, bound: number): Promise<Seen> => {
  const answer = await ask(together([puzzle]), bound + 1);
  const [solutions] = modelsIn(answer, [puzzle]);
  if (solutions!.length <= bound) return exactly(puzzle, solutions!);
  return { count: bound, exact: false, solutions: solutions!.slice(0, bound), possible: await braves(puzzle) };
};

/**
 * What the oracle finds of each puzzle, its solutions up to the bound. Many puzzles are asked about in one program, since
 * every call costs; where there are too many solutions for that, each is asked about alone.
 */
export const oracleOf = async (puzzles: readonly Puzzle[], bound: number): Promise<Seen[]> => {
  if (puzzles.length === 0) return [];
  const most = puzzles.length * Math.min(bound, 500);
  const answer = await ask(together(puzzles), most + 1);
  if (answer.Models.Number <= most) {
    const solutions = modelsIn(answer, puzzles);
    if (solutions.every((list) => list.length <= bound))
      return puzzles.map((puzzle, k) => exactly(puzzle, solutions[k]!));
  }
  const seen: Seen[] = [];
  for (const puzzle of puzzles) seen.push(await alone(puzzle, bound));
  return seen;
};
