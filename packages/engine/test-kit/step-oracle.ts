import type { Board } from "../src/board/board.ts";
import { listOf } from "../src/board/digits.ts";
import type { Claim, Relation } from "../src/deduce/step.ts";
import { cellsOfRelation } from "../src/prove/form.ts";
import { cellNamed, placeOf } from "../src/puzzle/canvas.ts";
import { ask, factsOf } from "./clingo.ts";
import { oracles } from "./kind-files.ts";

/** What the outside oracle (the answer-set solver clingo) says of a claim. */
export interface StepSeen {
  /** Some digits obey its reasons. */
  readonly canHold: boolean;
  /** Some digits obey its reasons and not its conclusion. */
  readonly canFail: boolean;
}

const v = (cell: string, digit: number | string): string => {
  const { row, column } = placeOf(cell)!;
  return `v(${row},${column},${digit})`;
};

/** A body that is true where the relation is broken. */
const broken = (relation: Relation): string => {
  const cells = cellsOfRelation(relation);
  const all = cells.map((cell, k) => v(cell, `X${k}`)).join(", ");
  if ("sum" in relation) return `${all}, ${cells.map((_, k) => `X${k}`).join(" + ")} != ${relation.is}`;
  if ("same" in relation) return `${all}, X0 != X1`;
  if ("less" in relation) return `${all}, X0 >= X1`;
  return `${all}, (X0 + X1) \\ 2 ${relation.is === "same" ? "!=" : "="} 0`;
};

/** The digits that the grids allow, in exactly one of which each cell is; nothing else is demanded. */
const cellsOf = ({ puzzle }: Board): string[] => [
  ...puzzle.grids.flatMap(factsOf),
  `any(${[...new Set(puzzle.grids.flatMap(({ digits }) => digits))].join(";")}).`,
  "cell(R,C) :- in(_,R,C).",
  "barred(R,C,D) :- in(G,R,C), any(D), not digit(G,D).",
  "{ v(R,C,D) : any(D), not barred(R,C,D) } = 1 :- cell(R,C).",
];

const entryOf = (board: Board, id: string) => {
  const index = board.rules.findIndex((rule) => rule.id === id);
  return board.puzzle.rules[index]!;
};

const reasonsOf = (board: Board, { because }: Claim): string[] => [
  ...because.houses.map((id) => {
    const cells = board.house(id)!.cells.map((cell) => board.canvas.names[cell]!);
    return `:- any(D), 2 { ${cells.map((cell) => v(cell, "D")).join("; ")} }.`;
  }),
  ...because.rules.map((id, n) =>
    oracles.get(entryOf(board, id).kind)!(entryOf(board, id), { puzzle: board.puzzle, n }),
  ),
  ...Object.entries(because.facts).flatMap(([cell, digits]) =>
    listOf(board.domains[cellNamed(board.canvas, cell)!]!)
      .filter((digit) => !digits.includes(digit))
      .map((digit) => `:- ${v(cell, digit)}.`),
  ),
  ...because.spots.map(({ digit, cells }) => `:- not 1 { ${cells.map((cell) => v(cell, digit)).join("; ")} }.`),
  ...because.relations.map((relation) => `:- ${broken(relation)}.`),
];

const failuresOf = ({ places, removes, spots, relates }: Claim): string[] => [
  ...Object.entries(places).map(([cell, digit]) => `fails :- not ${v(cell, digit)}.`),
  ...Object.entries(removes).flatMap(([cell, digits]) => digits.map((digit) => `fails :- ${v(cell, digit)}.`)),
  ...spots.map(({ digit, cells }) => `fails :- not 1 { ${cells.map((cell) => v(cell, digit)).join("; ")} }.`),
  ...relates.map((relation) => `fails :- ${broken(relation)}.`),
];

/** Asks whether a claim's reasons can hold and whether its conclusion can fail then; nothing of ours is asked. */
export const stepSeen = async (board: Board, claim: Claim): Promise<StepSeen> => {
  const reasons = [...cellsOf(board), ...reasonsOf(board, claim), "#show v/3."];
  const models = async (program: readonly string[]): Promise<number> =>
    (await ask(program.join("\n"), 1)).Models.Number;
  return {
    canHold: (await models(reasons)) > 0,
    canFail: !claim.contradiction && (await models([...reasons, ...failuresOf(claim), ":- not fails."])) > 0,
  };
};
