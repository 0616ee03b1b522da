import type { Puzzle, Setter } from "@solvewright/engine";
import type { Fact } from "./show.ts";

const asked = ({ name, permission: { show } }: Setter): string[] => {
  if (show === "own" || show === "granted") return [];
  if (show === "asked") return [`${name} has been asked and has not answered yet. The pack will wait for it.`];
  if (show === "refused") return [`${name} has said no: none of this may go out.`];
  return [`No word from ${name} yet. The pack will wait for it.`];
};

/** What is not known yet, by fact, in sentences. */
export const wantedFor = ({ setters }: Puzzle): Readonly<Record<Fact, readonly string[]>> => ({
  credit: setters.length === 0 ? ["The setter's name."] : [],
  link: setters.filter(({ link }) => !link).map(({ name }) => `A link to ${name}, for the credit.`),
  date: ["The date of the show."],
  consent: setters.flatMap(asked),
});
