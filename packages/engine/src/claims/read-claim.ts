import type { Board } from "../board/board.ts";
import { both, type Digits, digitsOf, either, has, isOne, min, none, without } from "../board/digits.ts";
import { type Cell, cellNamed } from "../puzzle/canvas.ts";
import type { Fault } from "../rules/contract.ts";

/** What somebody says follows, and from what; nothing of it is judged yet. */
export interface Said {
  readonly places: ReadonlyMap<Cell, number>;
  readonly removes: ReadonlyMap<Cell, Digits>;
  /** Houses and rules, by id. */
  readonly names: readonly string[];
  /** What is said to remain in a cell. */
  readonly facts: ReadonlyMap<Cell, Digits>;
}

const claimForm =
  "r4c5=3 or r4c5<>3, several with commas; then perhaps: because row 4, box 2, region at r1c1, cage 1, cage at r2c2, r1c1=5, r1c2 in 3 4";

class Unread extends Error {
  readonly fault: Fault;
  constructor(read: string, right: string) {
    super(read);
    this.fault = { read, right };
  }
}

const cellIn = ({ canvas }: Board, name: string): Cell => {
  const cell = cellNamed(canvas, name);
  if (cell === undefined) throw new Unread(name, `a cell of this puzzle, such as ${canvas.names[0]}`);
  return cell;
};

const digitsIn = (board: Board, cell: Cell, text: string): Digits => {
  const digits = text.split(/[\s/]+/).filter((word) => word !== "");
  for (const digit of digits)
    if (!/^\d{1,2}$/.test(digit) || !has(board.domains[cell]!, Number(digit)))
      throw new Unread(`${digit} in ${board.canvas.names[cell]}`, "a digit that this cell can hold");
  return digitsOf(digits.map(Number));
};

const shapes = { row: "row", column: "column", region: "region", box: "region" } as const;

/** The grid of that id, or the only one. */
const gridIn = ({ puzzle }: Board, text: string | undefined): number => {
  const at = puzzle.grids.findIndex(({ id, called }) => id === text || called.toLowerCase() === text?.toLowerCase());
  if (at >= 0) return at;
  if (text === undefined && puzzle.grids.length === 1) return 0;
  throw new Unread(text ?? "no grid named", `"of" and a grid: ${puzzle.grids.map(({ id }) => id).join(", ")}`);
};

const houseAt = (board: Board, shape: keyof typeof shapes, cell: Cell): string => {
  const found = board.houses.filter((house) => house.shape === shapes[shape] && house.cells.includes(cell));
  if (found.length === 1) return found[0]!.id;
  throw new Unread(`${shape} at ${board.canvas.names[cell]}`, `one ${shape}: ${found.map(({ id }) => id).join(", ")}`);
};

const houseOf = (board: Board, shape: keyof typeof shapes, label: string, grid: string | undefined): string => {
  const at = gridIn(board, grid);
  const houses = board.houses.filter((house) => house.shape === shapes[shape] && house.grid === at);
  const byNumber = shape === "box" ? houses[Number(label) - 1] : undefined;
  const house = byNumber ?? houses.find((each) => each.label.toLowerCase() === label.toLowerCase());
  if (house) return house.id;
  throw new Unread(`${shape} ${label}`, `one of ${houses.map(({ id }) => id).join(", ")}`);
};

const ruleAt = (board: Board, kind: string, cell: Cell): string => {
  const found = board.rules.filter((rule) => rule.kind.name === kind && rule.cells.includes(cell));
  if (found.length === 1) return found[0]!.id;
  const ids = (found.length > 0 ? found : board.rules).map(({ id }) => id);
  throw new Unread(`${kind} at ${board.canvas.names[cell]}`, `one of ${ids.join(", ")}`);
};

/** "row 4 of mill", "box 2", "region at r1c1", "cage 1", "cage at r2c2", or an id. */
const nameIn = (board: Board, text: string): string => {
  if (board.house(text) || board.rule(text)) return text;
  const at = /^([a-z-]+) at (r\d+c\d+)$/i.exec(text);
  const isShape = (word: string): word is keyof typeof shapes => Object.hasOwn(shapes, word);
  if (at) {
    const [, word, name] = [at[0], at[1]!.toLowerCase(), at[2]!];
    const cell = cellIn(board, name.toLowerCase());
    return isShape(word) ? houseAt(board, word, cell) : ruleAt(board, word, cell);
  }
  const [, word = "", label = "", grid] = /^([a-z-]+) ([a-z0-9]+)(?: of (.+))?$/i.exec(text) ?? [];
  if (isShape(word.toLowerCase())) return houseOf(board, word.toLowerCase() as keyof typeof shapes, label, grid);
  if (board.rule(`${word}/${label}`)) return `${word}/${label}`;
  throw new Unread(text, "a house or a rule: row 4, box 2, region at r1c1, cage 1, cage at r2c2, or an id of check");
};

const about = /^(r\d+c\d+)\s*(=|<>|≠|!=|in|is not|isn't|is)\s*([\d\s/]+)$/i;
const isNot = (sign: string): boolean => ["<>", "≠", "!=", "is not", "isn't"].includes(sign);

interface About {
  readonly cell: Cell;
  /** As written, in lower case. */
  readonly sign: string;
  readonly digits: Digits;
}

/** What a part says of a cell; undefined where it speaks of no cell. */
const aboutIn = (part: string, board: Board): About | undefined => {
  const [, name, sign = "", list = ""] = about.exec(part) ?? [];
  if (name === undefined) return undefined;
  const cell = cellIn(board, name.toLowerCase());
  return { cell, sign: sign.toLowerCase(), digits: digitsIn(board, cell, list) };
};

const partsOf = (text: string): string[] =>
  text
    .split(",")
    .map((part) => part.trim())
    .filter((part) => part !== "");

const readConclusion = (said: string, board: Board): Pick<Said, "places" | "removes"> => {
  const places = new Map<Cell, number>();
  const removes = new Map<Cell, Digits>();
  for (const part of partsOf(said)) {
    const told = aboutIn(part, board);
    if (!told || told.sign === "in") throw new Unread(part, claimForm);
    const { cell, sign, digits } = told;
    if (isNot(sign)) removes.set(cell, either(removes.get(cell) ?? none, digits));
    else if (isOne(digits)) places.set(cell, min(digits));
    else throw new Unread(part, "one digit behind =");
  }
  if (places.size + removes.size === 0) throw new Unread(said.trim() === "" ? "nothing that follows" : said, claimForm);
  return { places, removes };
};

const readReasons = (why: string, board: Board): Pick<Said, "names" | "facts"> => {
  const names = new Set<string>();
  const facts = new Map<Cell, Digits>();
  for (const part of partsOf(why)) {
    const told = aboutIn(part, board);
    if (!told) {
      names.add(nameIn(board, part));
      continue;
    }
    const { cell, sign, digits } = told;
    const left = isNot(sign) ? without(board.domains[cell]!, digits) : digits;
    facts.set(cell, both(facts.get(cell) ?? left, left));
  }
  return { names: [...names], facts };
};

const read = (text: string, board: Board): Said => {
  const [said = "", why = ""] = text.trim().split(/\bbecause\b/i);
  return { ...readConclusion(said, board), ...readReasons(why, board) };
};

/** Reads a deduction in the words of a small plain grammar (docs/claims.md), or says what can't be read and what would be right. */
export const readClaim = (text: string, board: Board): Said | Fault => {
  try {
    return read(text, board);
  } catch (error) {
    if (error instanceof Unread) return error.fault;
    throw error;
  }
};
