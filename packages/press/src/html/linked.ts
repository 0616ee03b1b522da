import { capital, type Puzzle } from "@solvewright/engine";
import { byWords } from "../deliverables/credit.ts";
import { oneLine } from "../deliverables/texts.ts";
import { safeLink } from "../paper/safe-link.ts";
import { element, escaped } from "../svg/element.ts";

/** A text that leads to a web page or a mail address; any other link is shown behind the text and leads nowhere. */
const linked = (text: string, link: string | undefined): string => {
  const href = safeLink(link);
  if (href) return element("a", { href, rel: "noopener noreferrer" }, escaped(text));
  return link ? `${escaped(text)} (${escaped(link)})` : escaped(text);
};

/** "by Maud Ferrier and Ivo Lang", each name a link where there is one. */
export const creditHtml = ({ setters }: Puzzle, isChanged = false): string => {
  const names = setters.map(({ name, link }) => `<bdi>${linked(oneLine(name), link)}</bdi>`);
  if (names.length === 0) return "Setter not named yet.";
  const [last] = names.slice(-1);
  return `${capital(byWords(isChanged))} ${names.length > 1 ? `${names.slice(0, -1).join(", ")} and ${last}` : last}.`;
};
