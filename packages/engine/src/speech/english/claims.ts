import type { Board } from "../../board/board.ts";
import type { Judged } from "../../claims/judge-claim.ts";
import type { Said } from "../../claims/read-claim.ts";
import type { Deduction } from "../../deduce/deduction.ts";
import { aDigit, aDigitOf, capital, listed } from "./counts.ts";
import { type Nouns, nounsFor } from "./nouns.ts";

const nameSaid = (board: Board, nouns: Nouns, id: string): string =>
  board.house(id) ? nouns.house(id) : nouns.rule(id);

const concludedSaid = (nouns: Nouns, { places, removes }: Pick<Said, "places" | "removes">): string =>
  listed([
    ...[...places].map(([cell, digit]) => `${nouns.cell(cell)} is ${aDigit(digit)}`),
    ...[...removes].map(([cell, digits]) => `${nouns.cell(cell)} can't be ${aDigitOf(digits)}`),
  ]);

const namesSaid = (board: Board, nouns: Nouns, ids: readonly string[]): string =>
  listed(ids.map((id) => nameSaid(board, nouns, id)));

const reasonsSaid = (board: Board, nouns: Nouns, { because }: Deduction): string => {
  const names = [...because.houses, ...because.rules];
  const shown = because.facts.size > 0 ? ["what this board shows"] : [];
  return listed([...names.map((id) => nameSaid(board, nouns, id)), ...shown]);
};

/** What comes of a viewer's own deduction, in plain sentences. */
export const judgedLine = (board: Board, said: Said, judged: Judged): string => {
  const nouns = nounsFor(board, "placed");
  switch (judged.verdict) {
    case "sound": {
      const spare = judged.spare.length > 0 ? ` ${capital(namesSaid(board, nouns, judged.spare))} was not needed.` : "";
      return `Sound: ${concludedSaid(nouns, said)}, by ${reasonsSaid(board, nouns, judged.step)}.${spare}`;
    }
    case "missing": {
      const unshown = judged.unshown.map((cell) => `${nouns.cell(cell)} is ${aDigitOf(said.facts.get(cell)!)}`);
      const lacks =
        unshown.length > 0
          ? `nothing on this board shows yet that ${listed(unshown)}`
          : `it also takes ${namesSaid(board, nouns, judged.missing)}`;
      return `Sound but for a missing reason: ${lacks}.`;
    }
    case "unsound": {
      const { counterexample } = judged;
      if (!counterexample) return "Not sound: what it rests on can't all hold on this board.";
      const other = [...said.places.keys(), ...said.removes.keys()].map((cell) => {
        const digit = counterexample[board.canvas.names[cell]!];
        return digit === undefined ? "" : `${nouns.cell(cell)} could be ${aDigit(digit)}`;
      });
      const could = listed(other.filter((text) => text !== ""));
      return `Not sound: by what is named and what this board shows, ${could === "" ? "it need not be so" : could}.`;
    }
    case "unknown":
      return "That is too big to judge. Name fewer reasons, or a smaller step.";
  }
};
