import type { Board } from "../board/board.ts";
import { kindNamed } from "../rules/registry.ts";
import type { Mend } from "./mend.ts";

/** A given (`{ r1c1: 3 }`) or a rule (`all-dots-shown`, `{ palindrome: "r1c1 r1c2" }`) as the puzzle file has it. */
export type InFile = string | Readonly<Record<string, unknown>>;

/** Givens and rules, such as a mend adds or takes away, one by one as in the file. */
export const fileForm = (
  { canvas, rules: own }: Board,
  { givens, rules }: Pick<Mend, "givens" | "rules">,
): InFile[] => [
  ...[...givens].map(([cell, digit]) => ({ [canvas.names[cell]!]: digit })),
  ...rules.map(({ kind: name, body }): InFile => {
    const kind = own.find((rule) => rule.kind.name === name)?.kind ?? kindNamed(name)!;
    const written = kind.body.write(body);
    return written === null ? name : { [name]: written };
  }),
];

const oneLine = (value: unknown): string => (typeof value === "string" ? value : JSON.stringify(value));

/** The same as a line of the file: "palindrome: r1c1 r1c2". */
export const fileLine = (item: InFile): string =>
  typeof item === "string"
    ? item
    : Object.entries(item)
        .map(([key, value]) => `${key}: ${oneLine(value)}`)
        .join(", ");
