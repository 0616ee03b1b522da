import { type Board, canvasOf, cellNamed, type House } from "@solvewright/engine";
import type { Ground } from "../solve/ground.ts";

const unsaid = { rule: "", title: "", noun: "", plural: "", at: [], holds: "" };

/** The board as the drawing code takes it: what it asks for was worked out when the page was made, nothing else is there. */
export const subjectOf = ({ data }: Ground): Board => {
  const { puzzle, houses, clues } = data;
  const canvas = canvasOf(puzzle.grids);
  const cellOf = (name: string): number => cellNamed(canvas, name)!;
  const givens = new Map(Object.entries(puzzle.givens).map(([name, digit]) => [cellOf(name), digit]));
  const allHouses = houses.map((house) => ({ ...house, cells: house.cells.map(cellOf) }));
  const rules = clues.map(({ id, wholeGrid, cells, shapes }) => ({
    id,
    cells: cells.map(cellOf),
    kind: { marks: () => shapes, words: () => unsaid, wholeGrid },
    instance: { id, cells: cells.map(cellOf) },
  }));
  const houseById = new Map(allHouses.map((house) => [house.id, house]));
  const ruleById = new Map(rules.map((rule) => [rule.id, rule]));
  const draft = { title: puzzle.title, setters: [], grids: puzzle.grids, canvas, givens, rules: puzzle.rules };
  return {
    puzzle: draft,
    canvas,
    givens,
    houses: allHouses,
    rules,
    house: (id: string) => houseById.get(id) as House | undefined,
    rule: (id: string) => ruleById.get(id),
  } as unknown as Board;
};
