import { count, type Digits, either, has, isOne, listOf, min, none, sumOf, without } from "../../../board/digits.ts";
import { isSettled } from "../../../board/knowledge.ts";
import { clueUnits } from "../../../deduce/clue-units.ts";
import { fixedSumsOf } from "../../../deduce/fixed-sums.ts";
import type { Cell } from "../../../puzzle/canvas.ts";
import { becauseOfTotal } from "../../../rules/because/total.ts";
import { type Part, textOf, wordsIn } from "../../line.ts";
import { aDigit, aDigitOf, counted, digitsSaid, listed } from "../counts.ts";
import { because, so } from "../nouns.ts";
import { namesOf, type Phrase, type Telling } from "../phrase.ts";
import { concluded, explained, isShortFor, mostWords, sentence, sentences } from "../sentence.ts";
import { eitherCase } from "./either-case.ts";
import { jointReason } from "./joint-reasons.ts";
import { premisesOf, reasonOf, takenBy } from "./reasons.ts";
import { leftIn, outcome, thatLeaves } from "./removals.ts";

export interface Known {
  /** Digits that stand on the clues. */
  readonly settled: readonly number[];
  readonly settledCells: readonly Cell[];
  /** Open cells of which something is known, without the one that is concluded. */
  readonly open: readonly (readonly [Cell, Digits])[];
  /** What is known of the concluded cell itself. */
  readonly own: Digits | undefined;
}

export const knownOf = ({ deduction, before }: Telling): Known => {
  const facts = [...deduction.because.facts];
  const settled = facts.filter(([cell, digits]) => isSettled(before, cell) && isOne(digits));
  const target = [...deduction.places.keys(), ...deduction.removes.keys()];
  const open = facts.filter(([cell]) => !isSettled(before, cell));
  const single = target.length === 1 ? target[0] : undefined;
  return {
    settled: settled.map(([, digits]) => min(digits)),
    settledCells: settled.map(([cell]) => cell),
    open: open.filter(([cell]) => cell !== single),
    own: open.find(([cell]) => cell === single)?.[1],
  };
};

const placed = ({ deduction, board, nouns }: Telling): Part | undefined => {
  const [place] = deduction.places;
  if (!place) return undefined;
  const [cell, digit] = place;
  return so(nouns.style === "pointing" ? `this is ${aDigit(digit)}` : `${nouns.cell(cell)} is ${aDigit(digit)}`, {
    cells: namesOf(board, [cell]),
  });
};

/** "This X lies in one row, so its digits differ": the houses that the clue's cells share, as a sentence of its own. */
const sharing = ({ deduction, nouns, board }: Telling, rule: string): Part[] => {
  const houses = deduction.because.houses.filter((id) => board.house(id));
  const [house] = houses;
  if (!house) return [];
  const inside = board.rule(rule)!.cells.every((cell) => board.house(house)!.cells.includes(cell));
  const where = nouns.style === "pointing" ? `one ${nouns.sort(house)}` : nouns.house(house);
  const text =
    inside && houses.length === 1
      ? `${nouns.rule(rule)} lies in ${where}, so its digits differ`
      : `cells of ${nouns.rule(rule)} that share ${houses.length > 2 ? "a house" : nouns.houses(houses)} differ`;
  return sentence(because(text, { rule }));
};

/** "at least 4", "at most 3" where that is what is left, else the digits: "4, 5 or 6". */
const restSaid = (left: Digits, whole: Digits): string => {
  const [list, all] = [listOf(left), listOf(whole)];
  const isRun = list.length >= 3 && list.at(-1)! - list[0]! === list.length - 1;
  if (isRun && list.at(-1) === all.at(-1)) return `at least ${list[0]}`;
  return isRun && list[0] === all[0] ? `at most ${list.at(-1)}` : digitsSaid(left, "or");
};

interface Open {
  readonly cells: readonly Cell[];
  readonly digits: Digits;
  readonly whole: Digits;
  readonly missing: Digits;
}

const openOf = ({ board }: Telling, open: Known["open"]): Open => ({
  cells: open.map(([cell]) => cell),
  digits: open.reduce<Digits>((all, [, left]) => either(all, left), none),
  whole: open.reduce<Digits>((all, [cell]) => either(all, board.domains[cell]!), none),
  missing: open.reduce<Digits>((all, [cell, left]) => either(all, without(board.domains[cell]!, left)), none),
});

/** "Those two are 4 or 5", "neither of those two is a 1 or a 6": that and those are reasons, this and these what follows. */
export const openSaid = (telling: Telling, open: Known["open"]): Part[] => {
  if (open.length === 0) return [];
  const { nouns, board } = telling;
  const { cells, digits, whole, missing } = openOf(telling, open);
  const are = cells.length === 1 ? "is" : "are";
  const pointed = cells.length === 1 ? "that one" : `those ${counted(cells.length)}`;
  const name = nouns.style === "placed" ? nouns.cells(cells) : pointed;
  const rest = restSaid(digits, whole);
  const of = { cells: namesOf(board, cells) };
  if (digits === whole) return [because(`${name} can't be just anything`, of)];
  if (rest.startsWith("at ") || count(digits) <= 4 || count(missing) > 3)
    return [because(`${name} ${are} ${rest}`, of)];
  if (cells.length === 1 || nouns.style === "placed")
    return [because(`${name} ${are === "is" ? "isn't" : "aren't"} ${aDigitOf(missing)}`, of)];
  return [because(`${cells.length === 2 ? "neither" : "none"} of ${pointed} is ${aDigitOf(missing)}`, of)];
};

export const conclusion = (telling: Telling): Part => placed(telling) ?? outcome(telling);

/** More clues than this are not named one by one. */
const mostNamed = 2;

/** Several clues together, each by its name: "these two black dots" where they are of one sort, "these three clues". */
export const clueNames = ({ nouns }: Telling, rules: readonly string[]): string[] => {
  if (nouns.style === "placed" || rules.length < 2) return rules.map((id) => nouns.rule(id));
  const [plural, ...others] = new Set(rules.map((id) => nouns.words(id).plural));
  if (others.length === 0) return [`these ${counted(rules.length)} ${plural}`];
  return rules.length > mostNamed ? [`these ${counted(rules.length)} clues`] : rules.map((id) => nouns.rule(id));
};

/** A clue between neighbours that is there because no mark is: "with no dot between them". */
const bareClue = (telling: Telling, rule: string, { settled, open }: Known): Part[] => {
  const mark = telling.nouns.words(rule).noun.replace(/^missing /, "");
  const where = openSaid(telling, open);
  return sentence(
    because(`with no ${mark} between them`, { rule }),
    settled.length > 0 ? ` and a ${listed(settled)} beside it` : "",
    where.length > 0 ? [{ text: ", where ", role: "plain" } as Part, ...where] : "",
    ", ",
    conclusion(telling),
  );
};

/** "a 3 and a 4", "two 1s": digits in order, those that come twice by their count. */
const digitsListed = (digits: readonly number[]): string =>
  listed(
    [...new Set(digits)]
      .sort((a, b) => a - b)
      .map((digit) => {
        const times = digits.filter((other) => other === digit).length;
        return times === 1 ? aDigit(digit) : `${counted(times)} ${digit}s`;
      }),
  );

/** What stands on the clue already. */
const standing = ({ board }: Telling, { settled, settledCells }: Known): Part[] => {
  const digits = settled.length > 3 ? `${counted(settled.length)} digits` : digitsListed(settled);
  return settled.length === 0 ? [] : [because(` has ${digits} already`, { cells: namesOf(board, settledCells) })];
};

/** What follows; of a cell that has two digits left the other is named too: "this is the 3, not the 1". */
const follows = (telling: Telling, own: Digits | undefined): Part => {
  const { deduction, nouns, board } = telling;
  const [place] = deduction.places;
  if (!place || own === undefined || count(own) !== 2) return conclusion(telling);
  const [cell, digit] = place;
  const name = nouns.style === "pointing" ? "this" : nouns.cell(cell);
  const other = listOf(own).find((left) => left !== digit)!;
  return so(`${name} is the ${digit}, not the ${other}`, { cells: namesOf(board, [cell]) });
};

/** What the clue leaves of the cell, with the houses and all facts of the reasons but that about the cell itself. */
const leftByClue = ({ deduction, board }: Telling, rule: string, cell: Cell): Digits => {
  const { facts, houses } = deduction.because;
  const unit = clueUnits(board).find(({ rules, cells }) => rules[0] === rule && cells.includes(cell));
  if (!unit) return board.domains[cell]!;
  const start = unit.cells.map((other) => (other === cell ? undefined : facts.get(other)) ?? board.domains[other]!);
  const left = (houses.length > 0 ? unit.together : unit.alone).possible(start);
  return left?.[unit.cells.indexOf(cell)] ?? board.domains[cell]!;
};

/** What the clue would leave of the cell but is known to be gone. */
const goneFrom = (telling: Telling, rule: string, own: Digits | undefined): Digits => {
  const [place] = telling.deduction.places;
  if (!place || own === undefined || count(own) === 2) return none;
  const gone = without(leftByClue(telling, rule, place[0]), own);
  return count(gone) > 3 ? none : gone;
};

/** "this is a 6", or "this isn't a 4" and "it's a 6" where more is known of the cell than the clue says. */
const ending = (telling: Telling, rule: string, own: Digits | undefined): readonly [Part | undefined, Part] => {
  const { deduction, nouns, board } = telling;
  const [place] = deduction.places;
  const gone = goneFrom(telling, rule, own);
  if (!place || gone === none) return [undefined, follows(telling, own)];
  const [cell, digit] = place;
  const of = { cells: namesOf(board, [cell]) };
  const name = nouns.style === "pointing" ? "this" : nouns.cell(cell);
  return [because(`${name} isn't ${aDigitOf(gone)}`, of), so(`it's ${aDigit(digit)}`, of)];
};

/** A clue that needs nothing but what is known of the cell itself: "leaves 4 or 6 here, and the 6 is gone, so it's a 4". */
const byItself = (telling: Telling, rule: string, ruled: Part, own: Digits | undefined): Part[] => {
  const { deduction, nouns, board } = telling;
  const [cell, digit] = [...deduction.places][0]!;
  const of = { cells: namesOf(board, [cell]) };
  if (own === undefined) return sentence(ruled, " leaves ", so(`only ${aDigit(digit)} ${nouns.here(cell)}`, of));
  if (count(own) === 2) {
    const other = listOf(own).find((left) => left !== digit)!;
    return concluded(
      [ruled, because(` can't take the ${other} ${nouns.here(cell)}`, of)],
      undefined,
      so(`it's the ${digit}`, of),
    );
  }
  const leaves = because(` leaves ${digitsSaid(leftByClue(telling, rule, cell), "or")} ${nouns.here(cell)}`, of);
  const gone = goneFrom(telling, rule, own);
  if (gone === none) return sentence(ruled, " leaves ", so(`only ${aDigit(digit)} possible ${nouns.here(cell)}`, of));
  const out = because(`the ${digitsSaid(gone)} ${count(gone) === 1 ? "is" : "are"} gone`, of);
  return concluded([ruled, leaves], out, so(`it's ${aDigit(digit)}`, of));
};

/** The cell that must hold the same digit as this one by the clue, where there is one among the reasons. */
const twinOf = ({ deduction, board }: Telling, rule: string, cell: Cell): Cell | undefined => {
  const { kind, instance } = board.rule(rule)!;
  const facts = [...deduction.because.facts.keys()].filter((other) => other !== cell);
  const isTwin = (other: Cell): boolean =>
    kind
      .terms(instance)
      .some((term) => term.term === "equal" && term.cells.includes(cell) && term.cells.includes(other));
  return facts.length === 1 ? facts.find(isTwin) : undefined;
};

/** "Its twin on this palindrome is a 6, so this is a 6 too." */
const twins = (telling: Telling, ruled: Part, cell: Cell, twin: Cell): Part[] => {
  const { deduction, nouns, board } = telling;
  const left = deduction.because.facts.get(twin)!;
  const digit = deduction.places.get(cell);
  const said = isOne(left) ? aDigit(min(left)) : restSaid(left, board.domains[twin]!);
  const names = { cells: namesOf(board, [cell]) };
  const name = nouns.style === "pointing" ? "this" : nouns.cell(cell);
  const isSame = digit === undefined && leftIn(telling, cell) === left;
  const ends =
    digit !== undefined && isOne(left)
      ? so(`${name} is ${aDigit(digit)} too`, names)
      : isSame
        ? so(`${name} is too`, names)
        : conclusion(telling);
  const of = { cells: namesOf(board, [twin]) };
  if (nouns.style === "placed")
    return sentence("by ", ruled, ": ", because(`${nouns.cell(twin)} is ${said}`, of), ", so ", ends);
  return sentence(because("its twin on ", of), ruled, ` is ${said}, so `, ends);
};

/** A clue drawn between two cells: "There's a 4 across this X, so this is a 6." */
const across = (telling: Telling, rule: string, ruled: Part, known: Known): Part[] => {
  const { nouns, board, deduction } = telling;
  const [digit] = known.settled;
  const other = digit === undefined ? known.open[0]![0] : known.settledCells[0]!;
  const said = digit === undefined ? restSaid(known.open[0]![1], board.domains[other]!) : aDigit(digit);
  const names = { cells: namesOf(board, [other]) };
  const ends = ending(telling, rule, known.own);
  const [place] = deduction.places;
  const it = digit === undefined ? "it's" : "there's";
  if (nouns.style === "pointing" && ruled.text === "it")
    return concluded([because(`on its other side ${it} ${said}`, names)], ...ends);
  if (nouns.style === "pointing") return concluded([because(`${it} ${said} across `, names), ruled], ...ends);
  const here = place
    ? so(`${nouns.cell(place[0])} is ${aDigit(place[1])}`, { cells: namesOf(board, [place[0]]) })
    : conclusion(telling);
  const by = ruled.text === "it" ? [] : ["by ", ruled, ": "];
  return sentence(...by, because(`${nouns.cell(other)} is ${said}`, names), ", so ", here);
};

/** A name of more words than this is cut to its noun when the drawing shows which one is meant. */
const longestName = 5;

/** The clue by its name; where the sentence before spoke of it, "it" or "the same cage of 13". */
const ruledOf = ({ nouns, previous }: Telling, rule: string, isJustNamed: boolean): Part => {
  const { called, noun } = nouns.words(rule);
  const name = called === undefined || wordsIn(called) > longestName ? noun : called;
  const isSame = previous?.because.rules.includes(rule);
  const pointed = isSame ? `the same ${name}` : `this ${name}`;
  return because(isJustNamed ? "it" : nouns.style === "pointing" ? pointed : nouns.rule(rule), { rule });
};

/** "This column's X-sum of 12" where the clue stands at the one house that the step needs and is that house's own. */
const ofHouse = ({ deduction, nouns, board }: Telling, rule: string): Part | undefined => {
  const [house, another] = deduction.because.houses;
  if (house === undefined || another !== undefined || board.rule(rule)!.kind.body.gesture !== "margin")
    return undefined;
  const isOwn = board.rule(rule)!.cells.every((cell) => board.house(house)!.cells.includes(cell));
  if (!isOwn || nouns.style === "placed") return isOwn ? because(nouns.rule(rule), { rule }) : undefined;
  const { called, noun } = nouns.words(rule);
  return because(`this ${nouns.sort(house)}'s ${called ?? noun}`, { rule });
};

/** Whether what is left of all the clue's cells alike is all that there is to say: not more than it can be said in. */
const isAboutAll = (telling: Telling, rule: string): boolean => {
  const { removes, places } = telling.deduction;
  const cells = telling.board.rule(rule)!.cells;
  const lefts = new Set(cells.map((cell) => leftIn(telling, cell)));
  return places.size === 0 && removes.size === cells.length && lefts.size === 1 && count([...lefts][0]!) <= 3;
};

/** The clue with the reason that its kind gives, where there is one that can be said. */
const reasoned = (telling: Telling, rule: string, known: Known): Part[] | undefined => {
  const { nouns, deduction } = telling;
  const { removes, because } = deduction;
  // Digits that the clue by itself leaves for several cells are reason enough.
  if (removes.size > 1 && because.facts.size === 0) return undefined;
  const said = reasonOf(telling, rule, takenBy(telling));
  if (said === undefined) return undefined;
  const own = ofHouse(telling, rule);
  const first = own ? [] : sharing(telling, rule);
  const end = follows(telling, known.own);
  const of = { rule };
  if (first.length > 0) return explained(nouns.style, [], said, of, end, first);
  const ruled = own ?? ruledOf(telling, rule, false);
  const [, itself] = /^it (.*)$/s.exec(said) ?? [];
  if (itself !== undefined && isAboutAll(telling, rule)) return sentence(ruled, " ", thatLeaves(telling));
  const short =
    itself === undefined
      ? explained(nouns.style, [ruled, ": "], said, of, end)
      : explained(nouns.style, [ruled, " "], itself, of, end);
  return short ?? explained(nouns.style, [], said, of, end, sentence("take ", ruled));
};

/** One clue, with what stands on it and what is known of its cells. */
export const clue: Phrase = (telling) => {
  const { deduction, board } = telling;
  const [rule] = deduction.because.rules as [string];
  const known = knownOf(telling);
  const { wholeGrid, kind } = board.rule(rule)!;
  if (wholeGrid) return bareClue(telling, rule, known);
  const said = reasoned(telling, rule, known);
  if (said) return said;
  const first = sharing(telling, rule);
  const ruled = ruledOf(telling, rule, first.length > 0);
  const stands = standing(telling, known);
  const left = openSaid(telling, known.open);
  const cells = [...deduction.places.keys(), ...deduction.removes.keys()];
  const twin = cells.length === 1 ? twinOf(telling, rule, cells[0]!) : undefined;
  if (twin !== undefined) return twins(telling, ruled, cells[0]!, twin);
  if (stands.length === 0 && left.length === 0)
    return sentences(
      first,
      deduction.places.size > 0 ? byItself(telling, rule, ruled, known.own) : sentence(ruled, " ", thatLeaves(telling)),
    );
  if (kind.body.gesture === "edge" && cells.length === 1) return sentences(first, across(telling, rule, ruled, known));
  const ends = ending(telling, rule, known.own);
  if (stands.length === 0) {
    const named = first.length > 0 ? [] : [ruled, ": "];
    return sentences(first, concluded([...named, ...left], ...ends));
  }
  const and: readonly (string | Part)[] = left.length > 0 ? [" and ", ...left] : [];
  const reason = sentence(ruled, ...stands, ...and);
  if (left.length > 0 && wordsIn(textOf(reason)) > mostWords)
    return sentences(first, sentence(ruled, ...stands), concluded(left, ...ends));
  return sentences(first, concluded([ruled, ...stands, ...and], ...ends));
};

/** Whether nothing is left out that all of these cells lack. */
const isAnything = (telling: Telling, open: Known["open"]): boolean => {
  const { digits, whole } = openOf(telling, open);
  return digits === whole;
};

/** Lines, cages and houses are filled; a mark between two cells holds. */
const cannot = ({ board }: Telling, rules: readonly string[]): string =>
  rules.every((id) => board.rule(id)!.cells.length <= 2 || board.rule(id)!.wholeGrid)
    ? "can't hold"
    : "can't be filled";

/** The listed house in which the conclusion's digit would have to go somewhere else. */
const houseOf = ({ board, deduction }: Telling, cell: Cell, digit: number): string | undefined =>
  deduction.because.houses.find((id) => {
    const { cells, digits, complete } = board.house(id)!;
    return complete && cells.includes(cell) && has(digits, digit);
  });

/** "With the 4 of this row anywhere else, these two sum lines can't be filled. So this is a 4.": what to try, to see it. */
const otherwise = (telling: Telling, names: readonly string[]): Part[] | undefined => {
  const { nouns, deduction, board } = telling;
  const { rules } = deduction.because;
  if (rules.length === 0) return undefined;
  const of = { rule: rules[0]! };
  const [place] = deduction.places;
  const house = place && houseOf(telling, ...place);
  if (place && house !== undefined) {
    const elsewhere = because(`with the ${place[1]} of ${nouns.house(house)} anywhere else`, { house });
    const clues = because(`${listed(clueNames(telling, rules))} ${cannot(telling, rules)}`, of);
    return concluded([elsewhere, ", ", clues], undefined, conclusion(telling));
  }
  const [[target, gone], another] = [...takenBy(telling)] as [readonly [Cell, Digits], unknown];
  if (another !== undefined || count(gone) !== 1) return undefined;
  const tried = `with ${aDigitOf(gone)} ${nouns.here(target)}`;
  const together = names.length > 1 ? " together" : "";
  const said = because(`${tried}, ${listed(names)} ${cannot(telling, rules)}${together}`, {
    cells: namesOf(board, [target]),
  });
  return concluded([said], undefined, conclusion(telling));
};

/** Houses and clues together: the thought behind it where it can be said, else what can be tried to see it. */
export const joint: Phrase = (telling) => {
  const { deduction, nouns, board } = telling;
  const { rules, houses } = deduction.because;
  const whole = houses.find((id) => board.house(id)!.complete);
  const names = [...clueNames(telling, rules), ...(whole === undefined ? [] : [nouns.house(whole)])];
  const fits = isShortFor(nouns.style);
  const reason = jointReason(telling, clueNames(telling, rules), conclusion(telling));
  if (reason && fits(reason)) return reason;
  const either = eitherCase(telling, conclusion(telling));
  if (either && fits(either)) return either;
  const elsewhere = otherwise(telling, names);
  if (elsewhere && fits(elsewhere)) return elsewhere;
  const { open } = knownOf(telling);
  const of = rules[0] === undefined ? { house: whole! } : { rule: rules[0] };
  return sentences(
    open.length <= 2 && !isAnything(telling, open) ? sentence(openSaid(telling, open)) : [],
    sentence("however we fill ", because(listed(names), of), ", ", placed(telling) ?? outcome(telling)),
  );
};

/** A house's total, the sums in it, and the cells that the two don't share. */
const leftoverOf = ({ board, deduction }: Telling) => {
  const [{ plus, minus }] = deduction.because.counts as [{ plus: readonly string[]; minus: readonly string[] }];
  const cells = [...new Set(plus.flatMap((id) => board.house(id)!.cells))];
  const covered = minus.flatMap((id) => board.rule(id)!.cells);
  return {
    plus,
    minus,
    total: plus.reduce((all, id) => all + sumOf(board.house(id)!.digits), 0),
    made: minus.reduce((all, id) => all + fixedSumsOf(board.rule(id)!)[0]!.sum, 0),
    inside: cells.filter((cell) => !covered.includes(cell)),
    out: covered.filter((cell) => !cells.includes(cell)),
  };
};

/** What a house's total less the sums in it comes to, and whether that says all about a single cell. */
export const sumSaid = (telling: Telling): { readonly parts: Part[]; readonly isAll: boolean } => {
  const { deduction, nouns, board } = telling;
  const { plus, minus, total, made, inside, out } = leftoverOf(telling);
  const { noun, plural } = board.rule(minus[0]!)!.kind.words(board.rule(minus[0]!)!.instance);
  const sums = minus.length === 1 ? `its ${noun} makes` : `${counted(minus.length)} of the ${plural} make`;
  const subject = `${nouns.houses(plus)} ${plus.length === 1 ? "makes" : "make"} ${total}, and ${sums} ${made}`;
  const who = (list: readonly Cell[]): string => (list.length === 1 ? "the cell" : `the ${counted(list.length)} cells`);
  const rest =
    out.length === 0
      ? `${who(inside)} left over ${inside.length === 1 ? "is" : "make"} ${total - made}`
      : inside.length === 0
        ? `${who(out)} sticking out ${out.length === 1 ? "is" : "make"} ${made - total}`
        : `what sticks out is ${Math.abs(made - total)} ${made >= total ? "more" : "less"} than what is left over`;
  const of = { cells: namesOf(board, [...inside, ...out]) };
  const makes = because(subject, { house: plus[0]! });
  if (inside.length + out.length === 1) return { parts: sentence(makes, ": ", so(rest, of)), isAll: true };
  const isShort = wordsIn(`${subject} ${rest}`) <= mostWords;
  const isConcluded = deduction.relates.length > 0;
  const left = isConcluded ? so(rest, of) : because(rest, of);
  const sum = isShort ? [sentence(makes, ": ", left)] : [sentence(makes), sentence(left)];
  return { parts: sentences(...sum), isAll: isConcluded };
};

/** Why cells that are left over, or that stick out, and make so much rule digits out; not where there are both. */
const whyOfLeftover = (telling: Telling): string | undefined => {
  const { total, made, inside, out } = leftoverOf(telling);
  if (inside.length > 0 && out.length > 0) return undefined;
  const [cells, sum] = out.length === 0 ? [inside, total - made] : [out, made - total];
  const said = becauseOfTotal(cells, sum, { ...premisesOf(telling), removes: takenBy(telling) });
  return said?.replace(/^it /, "that ");
};

/** A house's total against the sums in it. */
export const sums: Phrase = (telling) => {
  const { parts, isAll } = sumSaid(telling);
  if (isAll) return parts;
  const why = whyOfLeftover(telling);
  const end = conclusion(telling);
  const told =
    why === undefined ? parts : sentences(parts, concluded([because(why, parts.at(-2)?.of)], undefined, end));
  return why !== undefined && isShortFor(telling.nouns.style)(told) ? told : sentences(parts, sentence("so ", end));
};
