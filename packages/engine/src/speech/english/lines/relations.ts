import type { Related } from "../../../board/related.ts";
import type { Part } from "../../line.ts";
import { counted, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { sentence, sentences } from "../sentence.ts";
import { clueNames, conclusion, knownOf, openSaid, sumSaid } from "./clues.ts";
import { sharedOut } from "./patterns.ts";

/** "these two are the same digit", "those two make 13": cells tied together, pointed at by `these` or `those`. */
const tied = ({ nouns }: Telling, related: Related, these: "these" | "those"): string => {
  const { cells } = related;
  const pointed = `${these} ${counted(cells.length)}`;
  const all = nouns.style === "pointing" ? pointed : nouns.cells(cells);
  switch (related.relation) {
    case "same":
      return `${all} are the same digit`;
    case "less": {
      const [low, high] = cells.map((cell) => nouns.cell(cell));
      return nouns.style === "pointing" ? "this one is lower than that one" : `${low} is lower than ${high}`;
    }
    case "sum":
      return `${all} make ${related.is}`;
    case "parity":
      return related.is === "same" ? `${all} are both odd or both even` : `of ${all}, one is odd and one even`;
  }
};

const tiedPart = (telling: Telling, related: Related): Part =>
  so(tied(telling, related, "these"), { cells: namesOf(telling.board, related.cells) });

/** "These two dots: these two are both odd or both even." */
const byClues = (telling: Telling, related: Related): Part[] => {
  const { rules } = telling.deduction.because;
  const names = clueNames(telling, rules);
  const clues = names.map((name, k) => because(name, { rule: rules[k]! }));
  return sentence(
    ...clues.flatMap((part, k) => (k === 0 ? [part] : [" and ", part])),
    ": ",
    tiedPart(telling, related),
  );
};

/** What houses and clues say of cells together, whatever their digits are. */
export const relation: Phrase = (telling) => {
  const { counts, rules } = telling.deduction.because;
  const [related] = telling.deduction.relates as readonly [Related];
  if (counts && rules.length > 0) return sumSaid(telling).parts;
  if (counts) return sharedOut(telling, counts[0]!.plus, counts[0]!.minus);
  return byClues(telling, related);
};

/** "Those two make 5. By this cage of 9, this is a 4." */
export const byRelation: Phrase = (telling) => {
  const { deduction, board } = telling;
  const [related] = deduction.because.relations as readonly [Related];
  const known = because(tied(telling, related, "those"), { cells: namesOf(board, related.cells) });
  const { open } = knownOf(telling);
  const clue = because(`by ${listed(clueNames(telling, deduction.because.rules))}`, {
    rule: deduction.because.rules[0]!,
  });
  const where = openSaid(telling, open);
  const said = where.length > 0 ? [clue, ", where ", ...where] : [clue];
  return sentences(sentence(known), sentence(...said, ", ", conclusion(telling)));
};
