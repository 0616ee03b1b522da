import type { Board } from "../../board/board.ts";
import { isRelated, type Knowledge } from "../../board/knowledge.ts";
import type { Related } from "../../board/related.ts";
import type { Deduction, Technique } from "../deduction.ts";
import { foundRelations } from "../found-relations.ts";
import { relating } from "../reasons.ts";
import { relatedUnits } from "../related-units.ts";
import { deductionsOf } from "../unit.ts";

/** A relation that was found before and one clue, taken together. */
export const byRelation: Technique = {
  name: "by-relation",
  level: 3,
  settles: true,
  fits: (because) => because.relations.length === 1 && because.rules.length > 0,
  *find(knowledge, board) {
    for (const related of knowledge.related ?? []) yield* givenBy(related, knowledge, board);
  },
};

function* givenBy(related: Related, knowledge: Knowledge, board: Board): Iterable<Deduction> {
  for (const unit of relatedUnits(board, related))
    for (const deduction of deductionsOf(unit, "by-relation", 3, knowledge, board))
      yield { ...deduction, because: { ...deduction.because, relations: [related] } };
}

const givesSomething = (related: Related, knowledge: Knowledge, board: Board): boolean => {
  for (const _ of givenBy(related, knowledge, board)) return true;
  return false;
};

/** What houses and clues say of two cells together, where a clue on them then gives something. */
export const relations: Technique = {
  name: "relation",
  level: 3,
  fits: ({ counts = [], houses, rules }) =>
    counts.every(({ plus, minus }) => [...plus, ...minus].every((id) => houses.includes(id) || rules.includes(id))),
  *find(knowledge, board) {
    for (const { related, because } of foundRelations(board))
      if (!isRelated(knowledge, related) && givesSomething(related, knowledge, board))
        yield relating("relation", 3, related, because);
  },
};
