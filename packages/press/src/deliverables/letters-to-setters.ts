import { listed, type Setter } from "@solvewright/engine";
import { plural } from "./plural.ts";
import type { Deliverable, Show } from "./show.ts";
import { oneLine } from "./texts.ts";
import { consentTo, isAgreed, type Use, uses } from "./wanted.ts";

/** What each consent is asked for, in the order in which it is asked. */
const requests: Readonly<Record<Use, string>> = {
  consent: "solve it on camera, with every step explained, and publish the video",
  page: "put up a page on which viewers can try it first; it is one file, sends nothing and names you",
  print: "offer it as a sheet to print, with your name on it",
  change: "change a clue, should the show need it a little easier; you would see the change first",
};

const open = (setter: Setter): Use[] =>
  (Object.keys(uses) as Use[]).filter((use) => ["unknown", "asked"].includes(consentTo(use, setter)));

const titleOf = ({ board }: Show): string => oneLine(board.puzzle.title) || "your puzzle";

const asking = (show: Show, setter: Setter, wanted: readonly Use[]): string => {
  const isAgain = wanted.every((use) => consentTo(use, setter) === "asked");
  const list = wanted.map((use, k) => `${k + 1}. ${requests[use]}`).join("\n");
  const opening = isAgain
    ? `I wrote to you about ${titleOf(show)} and would like to ask once more, in case my letter got lost.`
    : `I host a show in which we solve puzzles slowly and say why each digit goes where it goes. I would love to show ${titleOf(show)}.`;
  const when = show.date ? ` The show is planned for ${show.date}.` : "";
  return [
    `Dear ${oneLine(setter.name)},`,
    `${opening}${when}`,
    `May I\n\n${list}`,
    `Each is yours to give or to keep: "yes to 1, no to the rest" is a fine answer, and without an answer I will do none of them.`,
    `You would be named at the start, in the description and on everything that goes out${setter.link ? `, with a link to ${oneLine(setter.link)}` : ". Is there a link that your name should lead to"}${setter.link ? "." : "?"}`,
    "With thanks,\n[your name]",
  ].join("\n\n");
};

const refusals = (setter: Setter): string[] => {
  const refused = (Object.keys(uses) as Use[]).filter((use) => consentTo(use, setter) === "refused");
  if (refused.length === 0) return [];
  const what = listed(refused.map((use) => uses[use].about));
  return [`For you alone: ${oneLine(setter.name)} has said no to ${what}, so this is not asked again.`];
};

/** Who presents a puzzle of their own has nobody to ask. */
const isOwn = (setter: Setter): boolean => consentTo("consent", setter) === "own";

const letterTo = (show: Show, setter: Setter): string => {
  const wanted = open(setter);
  // Who does not want the show need not be asked for the rest.
  if (consentTo("consent", setter) === "refused" || wanted.length === 0)
    return [`Nothing is left to ask ${oneLine(setter.name)}.`, ...refusals(setter)].join("\n\n");
  return [...refusals(setter), asking(show, setter, wanted)].join("\n\n\n");
};

const nobody = "No setter is named in the puzzle file, so there is nobody to write to yet.\n";
const parted = (letters: readonly string[]): string => `${letters.join("\n\n\n----------\n\n\n")}\n`;

/** Asks for each consent that is still open, and for nothing else. */
export const letterToSetters: Deliverable = {
  name: "letter-to-setter.txt",
  purpose: "A letter that asks the setter for each consent still open.",
  needs: [],
  make: (show) => {
    const { setters } = show.board.puzzle;
    return setters.length === 0 ? nobody : parted(setters.map((setter) => letterTo(show, setter)));
  },
};

const agreedTo = (setter: Setter): Use[] => (Object.keys(uses) as Use[]).filter((use) => isAgreed(use, setter));

const noteTo = (show: Show, setter: Setter): string => {
  if (isOwn(setter)) return `The puzzle is ${oneLine(setter.name)}'s own to show, so no note is needed.`;
  if (!isAgreed("consent", setter))
    return `Not to be sent yet: ${oneLine(setter.name)} has not agreed to the show. The letter comes first.`;
  const agreed = agreedTo(setter);
  const also = [
    ...(agreed.includes("page") ? ["the page to try it on"] : []),
    ...(agreed.includes("print") ? ["the sheet to print"] : []),
  ];
  const minutes = Math.max(1, Math.round(show.plan.seconds / 60));
  return [
    `Dear ${oneLine(setter.name)},`,
    `${titleOf(show)} airs on ${show.date ?? "[date]"}. We take about ${plural(minutes, "minute")} for it, and say why each digit goes where it goes.`,
    `You are named at the start and in the description.${also.length > 0 ? ` With the video ${also.length > 1 ? "come" : "comes"} ${listed(also)}, with your name on ${also.length > 1 ? "both" : "it"}.` : ""} If your name or link should read otherwise, tell me and I will change it.`,
    "Thank you for letting us have it.\n[your name]",
  ].join("\n\n");
};

/** Tells the setter when the show is out. */
export const noteToSetters: Deliverable = {
  name: "note-to-setter.txt",
  purpose: "A note that tells the setter when the show airs.",
  needs: ["date", "consent"],
  make: (show) => {
    const { setters } = show.board.puzzle;
    return setters.length === 0 ? nobody : parted(setters.map((setter) => noteTo(show, setter)));
  },
};
