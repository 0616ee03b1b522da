import type { Place } from "../../puzzle/canvas.ts";
import { counted } from "../../speech/english/counts.ts";
import type { BodyShape } from "../body.ts";
import type { Body } from "../contract.ts";
import { digits, listOf, optional, path, text, word } from "./fields.ts";
import { shapeOf } from "./shape.ts";

/** The setter's own sentence; where `allows` lists the rows of digits that obey it, in path order, its meaning too. */
export interface OwnBody extends Body {
  readonly says: string;
  readonly cells?: readonly Place[];
  readonly drawn?: "line" | "area" | "dots";
  readonly allows?: readonly (readonly number[])[];
}

export const ownBody: BodyShape<OwnBody> = shapeOf({
  name: "own rule",
  form: "{ says, cells?, drawn?: line, area or dots, allows? }",
  gesture: "points",
  terse: "says",
  fields: {
    says: text("the rule as a sentence"),
    cells: optional(path()),
    drawn: optional(word("line", "area", "dots")),
    allows: optional(listOf(digits(), "rows of digits", 1)),
  },
  check: ({ cells, allows }) => {
    if (!allows) return [];
    if (!cells)
      return [{ at: ["allows"], read: "allows without cells", right: "the cells as well, in the order of the rows" }];
    return allows.flatMap((row, k) =>
      row.length === cells.length
        ? []
        : [
            {
              at: ["allows", k],
              read: row.join(" "),
              right: `${counted(cells.length)} ${cells.length === 1 ? "digit" : "digits"}, one a cell`,
            },
          ],
    );
  },
});
