import { count, type Digits, digitsOf, has, isOne, min } from "../../../board/digits.ts";
import { isSettled } from "../../../board/knowledge.ts";
import { linksBetween } from "../../../board/links.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import type { Part } from "../../line.ts";
import { aDigit, aDigitOf, aNoun, counted, digitsSaid, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { concluded, explained, sentence, sentences } from "../sentence.ts";
import { clueNames, joint } from "./clues.ts";
import { barringElsewhere } from "./reasons.ts";

const placement = ({ deduction }: Telling): readonly [Cell, number] => [...deduction.places][0]!;
const soHere = (telling: Telling, text: string): Part =>
  so(text, { cells: namesOf(telling.board, [placement(telling)[0]]) });

/** Where in its house a cell is: "in column 6" of a row. */
const within = ({ board, nouns }: Telling, cell: Cell, house: string): string => {
  const { shape, grid } = board.house(house)!;
  if (nouns.style === "pointing" || grid === undefined) return "";
  const { row, column } = board.canvas.places[cell]!;
  const sheet = board.puzzle.grids[grid]!;
  if (shape === "row") return `, in column ${column - sheet.column + 1}`;
  if (shape === "column") return `, in row ${row - sheet.row + 1}`;
  return `, in ${nouns.cell(cell)}`;
};

/** The house that the step before spoke of, where it settled a cell there. */
const isSameHouse = ({ previous, board }: Telling, house: string): boolean => {
  const [before] = previous?.places.keys() ?? [];
  return before !== undefined && previous!.because.houses.includes(house) && board.house(house)!.cells.includes(before);
};

export const lastCell: Phrase = (telling) => {
  const [cell, digit] = placement(telling);
  const [house] = telling.deduction.because.houses;
  if (isSameHouse(telling, house!))
    return sentence("that leaves ", soHere(telling, `${aDigit(digit)}${within(telling, cell, house!)}`));
  const { shape } = telling.board.house(house!)!;
  if (telling.previous)
    return sentence(
      telling.previous.technique === "last-cell" && shape !== "region" ? "then " : "and ",
      because(telling.nouns.house(house!), { house: house! }),
      " needs ",
      soHere(telling, `${aDigit(digit)}${within(telling, cell, house!)}`),
    );
  return sentence(
    because(telling.nouns.house(house!), { house: house! }),
    " just needs ",
    soHere(telling, `${aDigit(digit)}${within(telling, cell, house!)}`),
  );
};

interface Barriers {
  /** Houses and rules that have the digit already and cross the house. */
  readonly houses: readonly string[];
  readonly rules: readonly string[];
  /** Open cells that are known to lack it. */
  readonly open: readonly Cell[];
  /** Cells that the grids keep below it. */
  readonly limits: readonly Cell[];
}

const barriersOf = ({ deduction, before, board }: Telling, house: string, digit: number): Barriers => {
  const facts = [...deduction.because.facts];
  const inside = board.house(house)!.cells;
  return {
    houses: deduction.because.houses.filter((id) => id !== house),
    rules: deduction.because.rules,
    open: facts.filter(([cell]) => inside.includes(cell) && !isSettled(before, cell)).map(([cell]) => cell),
    limits: inside.filter((cell) => !has(board.domains[cell]!, digit)),
  };
};

const haveOne = (telling: Telling, { houses, rules }: Barriers): Part[] => {
  const { nouns, board } = telling;
  const shown = rules.filter((id) => !board.rule(id)!.wholeGrid);
  const unseen = rules.filter((id) => board.rule(id)!.wholeGrid);
  const names = [...nouns.houseNames(houses), ...shown.map((id) => nouns.rule(id))];
  const verb = houses.length + shown.length === 1 ? " has one" : " have one";
  const have: (string | Part)[] =
    names.length === 0 ? [] : [because(listed(names), houses[0] ? { house: houses[0] } : { rule: shown[0]! }), verb];
  const rest = names.length === 0 ? "it everywhere else" : "the rest";
  const bar: (string | Part)[] =
    unseen.length === 0
      ? []
      : [
          because(
            `${listed(unseen.map((id) => barring(telling, id)))} ${unseen.length === 1 ? "bars" : "bar"} ${rest}`,
            { rule: unseen[0]! },
          ),
        ];
  return [...have, ...(have.length > 0 && bar.length > 0 ? [", and "] : []), ...bar].map(
    (piece): Part => (typeof piece === "string" ? { text: piece, role: "plain" } : piece),
  );
};

/** A rule that is drawn nowhere: "a knight's move". */
const barring = ({ nouns }: Telling, rule: string): string => aNoun(nouns.words(rule).noun);

const knownOut = ({ nouns, board }: Telling, open: readonly Cell[]): Part[] => {
  const where =
    nouns.style === "placed"
      ? `in ${nouns.cells(open)}`
      : open.length === 1
        ? "in that one"
        : `in those ${counted(open.length)}`;
  return open.length === 0 ? [] : [because(`it isn't ${where}`, { cells: namesOf(board, open) })];
};

const tooSmall = ({ nouns, board }: Telling, limits: readonly Cell[], digit: number): Part[] => {
  if (limits.length === 0) return [];
  const lacking = board.puzzle.grids.filter(
    (grid, index) => !grid.digits.includes(digit) && limits.every((cell) => board.canvas.grids[cell]!.includes(index)),
  );
  const [grid] = lacking;
  const most = grid ? Math.max(...grid.digits) : 0;
  const ends = digit > most ? `stops at ${most}` : `has no ${digit}`;
  const stop = grid ? `${limits.length === 1 ? "lies" : "lie"} in ${grid.called}, which ${ends}` : "can't be it";
  return [because(`${nouns.cells(limits)} ${stop}`, { cells: namesOf(board, limits) })];
};

const joined = (clauses: readonly Part[][]): Part[] => {
  const full = clauses.filter((clause) => clause.length > 0);
  return full.flatMap((clause, k): Part[] =>
    k === 0 ? clause : [{ text: k === full.length - 1 ? " and " : ", ", role: "plain" }, ...clause],
  );
};

export const onlyPlace: Phrase = (telling) => {
  const [cell, digit] = placement(telling);
  const { nouns, deduction } = telling;
  const house = deduction.because.houses.find((id) => telling.board.house(id)!.cells.includes(cell))!;
  const barriers = barriersOf(telling, house, digit);
  const clauses = [
    haveOne(telling, barriers),
    knownOut(telling, barriers.open),
    tooSmall(telling, barriers.limits, digit),
  ].filter((clause) => clause.length > 0);
  const target = soHere(telling, nouns.style === "pointing" ? "it's here" : `it is ${nouns.here(cell)}`);
  if (clauses.length > 1) {
    const [first, ...more] = clauses;
    const opening = sentence(`${digit} in `, because(nouns.house(house), { house }), ": ", first);
    return sentences(opening, sentence("and ", joined(more), ", so ", target));
  }
  const reasons = joined(clauses);
  const [before] = telling.previous?.places.values() ?? [];
  if (reasons.length > 0 && before === digit && !isSameHouse(telling, house))
    return sentence(`${digit} in `, because(nouns.house(house), { house }), " too: ", reasons, ", so ", target);
  if (reasons.length > 0 && before !== undefined && !isSameHouse(telling, house) && nouns.style === "pointing")
    return sentence(
      `the ${digit} of `,
      because(nouns.house(house), { house }),
      " ",
      soHere(telling, "goes here"),
      ": ",
      reasons,
    );
  if (reasons.length > 0 && isSameHouse(telling, house))
    return concluded([`then the ${digit}: `, ...reasons], undefined, target);
  if (reasons.length === 0)
    return sentence(`the ${digit} of `, because(nouns.house(house), { house }), " has one place left", ": ", target);
  return concluded([`${digit} in `, because(nouns.house(house), { house }), ": ", ...reasons], undefined, target);
};

/** "by this clue, the other two make 9", or where the reason is what the clue itself can be, "this clue can only be 1 and 3". */
const byClue = (clue: string | Part, reason: string): readonly [opening: readonly (string | Part)[], said: string] => {
  const [, itself] = /^it (.*)$/s.exec(reason) ?? [];
  return itself === undefined ? [["by ", clue, ", "], reason] : [[clue, " "], itself];
};

/** "This arrow can't have the 4 of this box: ..., so it's here", "4 in this box: by this clue, ... By the other, ..., so it's here". */
const barred = (telling: Telling, house: string, cell: Cell, digit: number): Part[] | undefined => {
  const { nouns, board } = telling;
  const why = barringElsewhere(telling, house, cell, digit);
  if (!why) return undefined;
  const { holding, reasons } = why;
  const rules = [...reasons.keys()];
  const [reason, other, ...more] = new Set(reasons.values());
  const of = { rule: rules[0]! };
  const target = soHere(telling, nouns.style === "pointing" ? "it's here" : `it is ${nouns.here(cell)}`);
  const inHouse = because(nouns.house(house), { house });
  const ruled = (ids: readonly string[]): Part => because(listed(clueNames(telling, ids)), { rule: ids[0]! });
  const opening = [`${digit} in `, inHouse, ": "];
  const has = holding.length === 1 ? " has one" : " have one";
  if (other === undefined && holding.length === 0) {
    const itsOwn = rules.length === 1 ? reason! : reason!.replace(/^it /, "they ");
    const isApart = rules.every((id) => !board.rule(id)!.cells.includes(cell));
    const cant = [ruled(rules), ` can't have the ${digit} of `, inHouse];
    const alone = isApart ? sentence(...cant) : sentence("take ", ruled(rules), ` for the ${digit} of `, inHouse);
    const [by, said] = isApart ? [[": "], itsOwn] : byClue(ruled(rules), reason!);
    const short = [...(isApart ? cant : opening), ...by];
    return explained(nouns.style, short, said, of, target) ?? explained(nouns.style, [], itsOwn, of, target, alone);
  }
  if (other === undefined) {
    const [by, said] = byClue(ruled(rules), reason!);
    return explained(nouns.style, by, said, of, target, sentence(...opening, ruled(holding), has));
  }
  if (more.length + holding.length > 0 || rules.length > 2) return undefined;
  const [firstBy, firstSaid] = byClue(nouns.rule(rules[0]!), reason!);
  const [secondBy, secondSaid] = byClue(nouns.style === "placed" ? nouns.rule(rules[1]!) : "the other", other);
  const first = sentence(...opening, ...firstBy, because(firstSaid, of));
  return explained(nouns.style, secondBy, secondSaid, { rule: rules[1]! }, target, first);
};

export const onlyPlaceByClues: Phrase = (telling) => {
  const [cell, digit] = placement(telling);
  const { nouns, deduction, board } = telling;
  const house = deduction.because.houses.find(
    (id) => board.house(id)!.cells.includes(cell) && board.house(id)!.complete,
  );
  // Small reasons may have lost the house that the step was found by.
  if (house === undefined) return joint(telling);
  const said = barred(telling, house, cell, digit);
  if (said) return said;
  const rules = deduction.because.rules;
  const keep = `${listed(clueNames(telling, rules))} ${rules.length === 1 ? "keeps" : "keep"} it out elsewhere`;
  return concluded(
    [`${digit} in `, because(nouns.house(house), { house }), ": ", because(keep, { rule: rules[0]! })],
    undefined,
    soHere(telling, nouns.style === "pointing" ? "it's here" : `it is ${nouns.here(cell)}`),
  );
};

/** The digits that the cell sees settled, by this step's reasons. */
const seenBy = ({ deduction, before, board }: Telling, cell: Cell): Digits =>
  digitsOf(
    [...deduction.because.facts]
      .filter(
        ([other, digits]) => isSettled(before, other) && isOne(digits) && linksBetween(board, cell, other).length > 0,
      )
      .map(([, digits]) => min(digits)),
  );

export const onlyDigit: Phrase = (telling) => {
  const [cell, digit] = placement(telling);
  const { nouns, deduction } = telling;
  const own = deduction.because.facts.get(cell);
  const seen = seenBy(telling, cell);
  const name = nouns.style === "pointing" ? "this one" : nouns.cell(cell);
  const names = { cells: namesOf(telling.board, [cell]) };
  const itIs = soHere(telling, `it's ${aDigit(digit)}`);
  if (own === undefined) return sentence(because(`${name} sees ${digitsSaid(seen)}`, names), ", so ", itIs);
  if (seen === 0) return sentence(because(`${name} has only`, names), " ", soHere(telling, `${aDigit(digit)} left`));
  const left = own as Digits;
  if (count(left) > 4)
    return sentence(because(`${name} sees ${digitsSaid(seen)}`, names), ", and the rest is ruled out: ", itIs);
  const sees = `, and it sees the ${digitsSaid(seen)}`;
  return concluded([because(`${name} could be ${aDigitOf(left)}`, names), sees], undefined, itIs);
};
