import { listed, type Setter } from "@solvewright/engine";
import type { Deliverable, Fact, Show } from "./show.ts";
import { oneLine } from "./texts.ts";

/** What a setter can agree to, by the fact that a file may lack. */
export const uses = {
  consent: { key: "show", about: "the show" },
  page: { key: "page", about: "a page to play it on" },
  print: { key: "print", about: "printing it" },
  change: { key: "change", about: "changing it" },
} as const;
export type Use = keyof typeof uses;

export const consentTo = (use: Use, { permission }: Setter): Setter["permission"]["show"] => permission[uses[use].key];
export const isAgreed = (use: Use, setter: Setter): boolean => ["own", "granted"].includes(consentTo(use, setter));

const asked = (use: Use, setter: Setter): string[] => {
  if (isAgreed(use, setter)) return [];
  const { about } = uses[use];
  const [name, consent] = [oneLine(setter.name), consentTo(use, setter)];
  if (consent === "asked") return [`${name} has been asked about ${about} and has not answered yet.`];
  if (consent === "refused") return [`${name} has said no to ${about}.`];
  return [`No word from ${name} about ${about} yet.`];
};

/** What is known of a show besides its solve. */
export type AboutShow = Omit<Show, "plan" | "solution">;

/** What is not known yet, by fact, in sentences. */
export const wantedFor = ({ board, date, isChanged }: AboutShow): Readonly<Record<Fact, readonly string[]>> => {
  const { setters } = board.puzzle;
  const open = (use: Use): string[] => setters.flatMap((setter) => asked(use, setter));
  return {
    credit: setters.length === 0 ? ["The setter's name."] : [],
    link: setters.filter(({ link }) => !link).map(({ name }) => `A link to ${oneLine(name)}, for the credit.`),
    date: date ? [] : ["The date of the show."],
    consent: open("consent"),
    page: open("page"),
    print: open("print"),
    change: isChanged ? open("change") : [],
  };
};

/** Everything that is published was made from a puzzle that was changed, if it was. */
export const needsOf = ({ needs }: Pick<Deliverable, "needs">): readonly Fact[] =>
  needs.includes("consent") ? [...needs, "change"] : needs;

/** Files that may not go out yet, and why. */
export interface Waiting {
  readonly because: string;
  readonly files: readonly string[];
}

/** What a list of facts keeps back: one entry a sentence, with the files that need it. */
export const waitingFor = (
  facts: readonly Fact[],
  files: readonly Pick<Deliverable, "name" | "needs">[],
  show: AboutShow,
): Waiting[] => {
  const wanted = wantedFor(show);
  return facts.flatMap((fact) => {
    const names = files.filter((file) => needsOf(file).includes(fact)).map(({ name }) => name);
    return names.length === 0 ? [] : wanted[fact].map((because) => ({ because, files: names }));
  });
};

/** What may not go out before a setter has agreed. */
export const heldBack = (files: readonly Pick<Deliverable, "name" | "needs">[], show: AboutShow): Waiting[] =>
  waitingFor(["consent", "page", "print", "change"], files, show);

const named = (setters: readonly Setter[]): string => listed(setters.map(({ name }) => oneLine(name)));

/** What holds for a puzzle that is not the setter's any more, letter by letter. */
export const onChanges = ({ board, isChanged }: AboutShow): string => {
  const { setters } = board.puzzle;
  if (setters.length === 0) return "No setter is named, so nobody can have agreed to changes.";
  if (!isChanged && setters.every((setter) => consentTo("change", setter) === "own"))
    return "The puzzle is the presenter's own, so it may be changed.";
  const open = setters.filter((setter) => !isAgreed("change", setter));
  const disagrees = `${named(open)} ${open.length > 1 ? "have" : "has"} not agreed to`;
  const whose = `${named(setters)}'s own`;
  if (isChanged && open.length === 0)
    return `This puzzle was changed, with consent. It may not go out as ${whose}: say that it was changed.`;
  if (isChanged) return `This puzzle was changed, and ${disagrees} that: it may not go out, and never as ${whose}.`;
  return open.length === 0
    ? `Should you change the puzzle, say so wherever it goes out: it may not go out as ${whose}.`
    : `A changed puzzle may not go out as ${whose}: ${disagrees} changes.`;
};
