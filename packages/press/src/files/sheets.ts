import { sheetPages } from "../deliverables/sheet/sheet-pages.ts";
import type { Deliverable, Show } from "../deliverables/show.ts";
import { oneLine } from "../deliverables/texts.ts";
import { type Paper, papers } from "../paper/paper.ts";
import { pdfOf } from "./pdf-of.ts";

/** What a PDF of a show says about itself. */
export const aboutShow = ({ board: { puzzle } }: Show, what: string) => ({
  title: `${oneLine(puzzle.title)}: ${what}`,
  author: puzzle.setters.map(({ name }) => oneLine(name)).join(", "),
});

const asked = ({ board, isChanged = false }: Show) => ({ board, isChanged });

const puzzleSheet = (paper: Paper): Deliverable => ({
  name: `sheet-${paper.name}.pdf`,
  purpose: `The puzzle to print and solve by hand, on ${paper.called}.`,
  needs: ["credit", "consent", "print"],
  make: (show) => pdfOf(sheetPages({ ...asked(show), paper }), aboutShow(show, "the puzzle")),
});

const solutionSheet = (paper: Paper): Deliverable => ({
  name: `solution-${paper.name}.pdf`,
  purpose: `The solution to print, on ${paper.called}. Keep it out of sight until the show is out.`,
  needs: ["credit", "consent", "print"],
  make: (show) =>
    pdfOf(
      sheetPages({ ...asked(show), paper, settled: show.solution, after: "the solution" }),
      aboutShow(show, "the solution"),
    ),
});

/** Puzzle and solution for print on every paper. */
export const sheets: readonly Deliverable[] = papers.flatMap((paper) => [puzzleSheet(paper), solutionSheet(paper)]);
