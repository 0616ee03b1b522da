import { type Command, json } from "../../command.ts";
import { wishes } from "../../wishes-file.ts";

export const why: Command = {
  name: "why",
  usage: "FILE [CELL] [DIGIT]",
  summary: "Why a cell is what it is, or can't be a digit",
  flags: [
    { name: "--at <beat>", text: "from the board at this beat of the running order" },
    wishes,
    { name: "--board <file>", text: "from a board file, as the try-it page saves it" },
    {
      name: "--claim <words>",
      text: 'judges a deduction instead: "r4c5=3 because row 4, cage at r4c6" (docs/claims.md)',
    },
    { name: "--picture <file>", text: "draws the reason as SVG" },
    json,
  ],
  example: "solvewright why examples/paper-mill.puzzle.yaml r5c8 5",
  load: () => import("./run.ts"),
};
