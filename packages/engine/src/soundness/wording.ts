import type { Board, RuleInstance } from "../board/board.ts";
import type { Kind } from "../rules/contract.ts";
import { kinds as allKinds } from "../rules/registry.ts";
import { unsaidOfMissing } from "./assumptions.ts";

/** The setter's own rules held against the file's: a plain search for words, no understanding. */
export interface Wording {
  /** Kinds of rules of the file that the wording does not seem to say, in file order. */
  readonly unsaid: readonly { readonly rule: string; readonly ids: readonly string[] }[];
  /** Kinds of rules about missing marks that it seems to have and the file has not, and what they say as a clause. */
  readonly onlySaid: readonly { readonly rule: string; readonly says: string }[];
}

/** Words in lower case between single spaces, with one at either end; one spelling of what has two. */
const plain = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .replace(/neighbor/g, "neighbour")
    .trim()} `;

const escaped = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|]/g, "\\$&");

/** The beginning of a word; one of one or two letters is a whole word, or has an s. */
const beginning = (phrase: string): string => escaped(phrase) + (/(^| )\S{1,2}$/.test(phrase) ? "(?=s? )" : "");

/** "all ... dot" and such as a pattern; a "not" or "no" just before it turns it round. */
const patternOf = (said: string): RegExp => {
  const parts = said.split("...").map((part) => beginning(plain(part).trim()));
  return new RegExp(`(?<! (not|no|t)( necessarily)?) ${parts.join("\\S*(?: \\S+){0,3}? ")}`, "u");
};

const ownWords = ({ kind, instance }: RuleInstance): string[] => {
  const { noun, plural, title } = kind.words(instance);
  return kind.missing ? [title, kind.missing.says] : [kind.name, noun, plural, title];
};

const isWeighty = (word: string): boolean =>
  word.length > 3 && !/^(that|this|with|from|digit|cell|every|each)/.test(word);
const stem = (word: string): string => word.slice(0, Math.max(4, word.length - 2));

/** Whether nearly all weighty words of the rule's own sentence stand in the text: for rules in the setter's words. */
const isRepeated = ({ kind, instance }: RuleInstance, text: string): boolean => {
  const words = plain(kind.words(instance).rule).trim().split(" ").filter(isWeighty);
  const there = words.filter((word) => text.includes(` ${stem(word)}`));
  return words.length > 0 && there.length >= 0.8 * words.length;
};

const isSaid = (phrases: readonly string[], text: string): boolean =>
  phrases.some((phrase) => patternOf(phrase).test(text));

const seemsSaid = (rule: RuleInstance, text: string): boolean =>
  isSaid([...ownWords(rule), ...(rule.kind.alsoSaid ?? [])], text) || isRepeated(rule, text);

const unsaidIn = ({ rules }: Board, text: string): Wording["unsaid"] => {
  const ids = new Map<string, string[]>();
  const said = new Set(rules.filter((rule) => seemsSaid(rule, text)).map(({ kind }) => kind.name));
  for (const { id, kind } of rules) if (!said.has(kind.name)) ids.set(kind.name, [...(ids.get(kind.name) ?? []), id]);
  return [...ids].map(([rule, list]) => ({ rule, ids: list }));
};

const isSaidOfMissing = ({ missing, alsoSaid = [] }: Kind, text: string): boolean =>
  isSaid([missing!.says, ...alsoSaid], text);

/** Undefined where the file has no wording of the setter's. */
export const compareWording = (board: Board, kinds: readonly Kind[] = allKinds): Wording | undefined => {
  const { wording } = board.puzzle;
  if (wording === undefined) return undefined;
  const text = plain(wording);
  const onlySaid = unsaidOfMissing(board, kinds).filter((kind) => isSaidOfMissing(kind, text));
  const clauses = onlySaid.map(({ name, missing }) => ({ rule: name, says: missing!.says }));
  return { unsaid: unsaidIn(board, text), onlySaid: clauses };
};
