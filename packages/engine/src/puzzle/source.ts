import { type Document, Lexer, parseDocument } from "yaml";
import { shown } from "../rules/shown.ts";
import { deepest, tooDeep, treeOf } from "./from-yaml.ts";
import type { Spot, Tell, Tree } from "./tree.ts";
import { rightOf } from "./yaml-faults.ts";

/** Bytes of UTF-8 that a file may have; checked before anything is parsed. */
export const mostBytes = 65_536;

const bytesOf = (text: string): number => {
  let bytes = 0;
  for (const character of text) bytes += utf8Length(character.codePointAt(0)!);
  return bytes;
};
const utf8Length = (code: number): number => (code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4);

const root: Spot = { from: 0, path: "" };
const codeOf = (character: string): string =>
  `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what it looks for
const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u0084\u0086-\u009f]/;
const strange = new RegExp(`${control.source}|\ufffd`, "g");

/** True where the text is not worth looking at: nothing in it, or too much. */
const isBeyondReading = (text: string, right: string, tell: Tell): boolean => {
  const bytes = text.length > mostBytes ? text.length : bytesOf(text);
  if (bytes > mostBytes) tell(root, `a file of ${Math.ceil(bytes / 1024)} KiB`, "64 KiB at most");
  else if (text.trim() === "") tell(root, "an empty file", right);
  return bytes > mostBytes || text.trim() === "";
};

/** Tells characters that belong in no text; true where there are some. */
const tellStrange = (text: string, tell: Tell): boolean => {
  for (const { 0: character, index } of text.matchAll(strange)) {
    const isLost = character === "\ufffd";
    const read = isLost ? "a character that was lost in decoding" : `a control character, ${codeOf(character)}`;
    tell({ from: index, path: "" }, read, isLost ? "a file in UTF-8" : "text without control characters");
  }
  return text.search(strange) >= 0;
};

/** Marks that YAML's lexer puts between the pieces of the source. */
const marks = ["\u0002", "\u0018", "\u001f"];

/**
 * Where lists and keys lie too deep in each other, or -1. It is looked for before the text is parsed, which takes a turn
 * of the stack for each level.
 */
const tooDeepAt = (text: string): number => {
  let [at, brackets, inLine] = [0, 0, 0];
  for (const piece of new Lexer().lex(text)) {
    if (piece === "[" || piece === "{") brackets++;
    else if (piece === "]" || piece === "}") brackets = Math.max(0, brackets - 1);
    else if (brackets === 0 && (piece === "-" || piece === "?" || piece === ":")) inLine++;
    else if (piece.includes("\n")) inLine = 0;
    if (brackets > deepest || inLine > deepest) return at;
    if (!marks.includes(piece)) at += piece.length;
  }
  return -1;
};

const tellControls = (tree: Tree, tell: Tell): void => {
  const inText = (text: string, spot: Spot): void => {
    const found = control.exec(text);
    if (found) tell(spot, `a control character, ${codeOf(found[0])}`, "text without control characters");
  };
  if (tree.shape === "list") for (const item of tree.items) tellControls(item, tell);
  if (tree.shape === "scalar") inText(tree.text, tree);
  if (tree.shape === "keys")
    for (const { key, keySpot, value } of tree.entries) {
      inText(key, keySpot);
      tellControls(value, tell);
    }
};

/** How many of YAML's own errors are told: what comes after the first is often no more than its echo. */
const mostSyntaxErrors = 3;

const endOf = (source: string, from: number): string =>
  source.slice(from).trim() === "" ? "the end of the file" : "the end of a line";

/** A # after a blank starts a comment: where a bracket is missed after one, that is the likely reason. */
const hint = (source: string, from: number): string => {
  const before = source.slice(0, from).trimEnd();
  return /\s#/.test(before.slice(before.lastIndexOf("\n") + 1))
    ? " (what stands behind a # is a comment, so a colour wants quotes)"
    : "";
};

const tellSyntax = (document: Document, source: string, tell: Tell): boolean => {
  const told = new Set<string>();
  for (const error of [...document.errors, ...document.warnings].sort((a, b) => a.pos[0] - b.pos[0])) {
    if (told.size >= mostSyntaxErrors) break;
    const from = Math.min(error.pos[0], source.length);
    const line = `${source.lastIndexOf("\n", from - 1)}`;
    if (told.has(line)) continue;
    told.add(line);
    const read =
      error.code === "TAB_AS_INDENT" ? "a tab" : shown(source.slice(from).split("\n", 1)[0] || endOf(source, from));
    tell({ from, path: "" }, read, rightOf(error) + (error.code === "BAD_INDENT" ? hint(source, from) : ""));
  }
  return told.size > 0;
};

/**
 * A text taken apart: its tree where there is one, and whether it was sound YAML (what is wrong has been told; `right`:
 * what an empty text should be). Lines end with LF or CRLF.
 */
export const parse = (source: string, right: string, tell: Tell): { readonly tree?: Tree; readonly sound: boolean } => {
  if (isBeyondReading(source, right, tell)) return { sound: false };
  const isStrange = tellStrange(source, tell);
  const deep = tooDeepAt(source);
  if (deep >= 0) return tell({ from: deep, path: "" }, "lists in lists in lists", tooDeep) ?? { sound: false };
  const document = parseDocument(source, { uniqueKeys: false, prettyErrors: false, logLevel: "error" });
  const sound = !tellSyntax(document, source, tell);
  const tree = treeOf(document, source, sound ? tell : () => undefined);
  if (sound && !isStrange) tellControls(tree, tell);
  return { tree, sound };
};
