import {
  type Alias,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  parseDocument,
  type Scalar as YamlScalar,
} from "yaml";
import { shown } from "../rules/shown.ts";
import type { Entry, Scalar, Spot, Tell, Tree } from "./tree.ts";
import { rightOf } from "./yaml-faults.ts";

/** Bytes of UTF-8 that a file may have; checked before anything is parsed. */
export const mostBytes = 65_536;
/** How deep lists and keys may lie in each other; the deepest form of the format needs seven. */
const deepest = 16;
/** How many times a file may repeat a part by `*name`; what is repeated holds no repetition itself. */
const mostAliases = 16;

const bytesOf = (text: string): number => {
  let bytes = 0;
  for (const character of text) bytes += utf8Length(character.codePointAt(0)!);
  return bytes;
};
const utf8Length = (code: number): number => (code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4);

const joined = (path: string, step: string | number): string => (path === "" ? `${step}` : `${path}/${step}`);

const root: Spot = { from: 0, path: "" };
const codeOf = (character: string): string =>
  `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what it looks for
const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u0084\u0086-\u009f]/;
const strange = new RegExp(`${control.source}|\ufffd`, "g");

/** True where the text is not worth looking at: nothing in it, or too much. */
const isBeyondReading = (text: string, tell: Tell): boolean => {
  const bytes = text.length > mostBytes ? text.length : bytesOf(text);
  if (bytes > mostBytes) tell(root, `a file of ${Math.ceil(bytes / 1024)} KiB`, "64 KiB at most");
  else if (text.trim() === "") tell(root, "an empty file", "a puzzle: puzzle: 1, then a title, grids and rules");
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

/** Follows the text through its source, blanks standing for each other; -1 where the two part. */
const follow = (source: string, from: number, text: string, index: number): number => {
  let at = from;
  for (let k = 0; k < index; k++) {
    if (source[at] === text[k]) at++;
    else if (/\s/.test(text[k]!) && /\s/.test(source[at] ?? "")) while (/\s/.test(source[at] ?? "")) at++;
    else return -1;
  }
  while (text[index] !== undefined && /\S/.test(text[index]) && /\s/.test(source[at] ?? "")) at++;
  return at;
};

/** In a block (`|`) the text's lines are the source's, from the line after the header on, less the indentation. */
const inBlock = (source: string, from: number, text: string, index: number): number => {
  const row = text.slice(0, index).split("\n").length - 1;
  const column = index - (text.lastIndexOf("\n", index - 1) + 1);
  let start = from;
  for (let k = 0; k <= row; k++) start = source.indexOf("\n", start) + 1;
  const end = source.indexOf("\n", start);
  const line = source.slice(start, end < 0 ? source.length : end).replace(/\r$/, "");
  return start + line.length - text.split("\n")[row]!.length + column;
};

const quoted = ["QUOTE_DOUBLE", "QUOTE_SINGLE"];

const scalarOf = (node: YamlScalar | undefined, spot: Spot, source: string): Scalar => {
  const isPlain = node?.type === "PLAIN";
  const text = isPlain || typeof node?.value !== "string" ? (node?.source ?? "") : node.value;
  const start = spot.from + (quoted.includes(node?.type ?? "") ? 1 : 0);
  const spotAt = (index: number): Spot => {
    const at =
      node?.type === "BLOCK_LITERAL" ? inBlock(source, start, text, index) : follow(source, start, text, index);
    return { path: spot.path, from: at < 0 ? spot.from : at };
  };
  return { ...spot, shape: "scalar", value: node?.value ?? null, text, spotAt };
};

/** Makes the tree of a document, telling what no puzzle file needs: keys twice, deep nests, many repetitions. */
const treeOf = (document: Document, source: string, tell: Tell): Tree => {
  let aliases = 0;
  const nothing = (spot: Spot): Scalar => scalarOf(undefined, spot, source);

  const repeated = (node: Alias, spot: Spot, depth: number, isRepeated: boolean): Tree => {
    const target = node.resolve(document);
    if (++aliases > mostAliases || isRepeated || !target) {
      if (aliases <= mostAliases + 1)
        tell(
          spot,
          `*${node.source}`,
          target ? "the part written out; few can be repeated by name" : "a name that an & gives before",
        );
      return nothing(spot);
    }
    return read(target, { ...spot, from: target.range?.[0] ?? spot.from }, depth, true);
  };

  const entry = (
    { key, value }: Pair,
    path: string,
    depth: number,
    isRepeated: boolean,
    seen: Set<string>,
  ): Entry[] => {
    const keyNode = key as Node | null;
    const from = keyNode?.range?.[0] ?? 0;
    if (!isScalar(keyNode)) return tell({ from, path }, "a key that is no word", "a word before the colon") ?? [];
    const name = scalarOf(keyNode, { from, path }, source).text;
    const keySpot = { from, path: joined(path, name) };
    if (seen.has(name)) return tell(keySpot, `the key ${shown(name)} twice`, "each key once") ?? [];
    seen.add(name);
    return [{ key: name, keySpot, value: read(value as Node | null, keySpot, depth + 1, isRepeated) }];
  };

  const read = (node: Node | null | undefined, above: Spot, depth: number, isRepeated: boolean): Tree => {
    const isEmpty = !node || (isScalar(node) && node.value === null && node.source === "");
    const spot = { path: above.path, from: isEmpty ? above.from : (node.range?.[0] ?? above.from) };
    if (!node) return nothing(spot);
    if (isAlias(node)) return repeated(node, spot, depth, isRepeated);
    if (isScalar(node)) return scalarOf(node, spot, source);
    if (depth > deepest)
      return tell(spot, "lists in lists in lists", "lists and keys that are nested less deeply") ?? nothing(spot);
    if (isSeq<Node>(node)) {
      const items = node.items.map((item, k) =>
        read(item, { from: spot.from, path: joined(spot.path, k) }, depth + 1, isRepeated),
      );
      return { ...spot, shape: "list", items };
    }
    const seen = new Set<string>();
    const entries = isMap(node)
      ? node.items.flatMap((pair) => entry(pair as Pair, spot.path, depth, isRepeated, seen))
      : [];
    return { ...spot, shape: "keys", entries };
  };
  return read(document.contents as Node | null, root, 0, false);
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

const tellSyntax = (document: Document, source: string, tell: Tell): boolean => {
  const told = new Set<string>();
  for (const error of [...document.errors, ...document.warnings].sort((a, b) => a.pos[0] - b.pos[0])) {
    if (told.size >= mostSyntaxErrors) break;
    const from = Math.min(error.pos[0], source.length);
    const line = `${source.lastIndexOf("\n", from - 1)}`;
    if (told.has(line)) continue;
    told.add(line);
    const read =
      error.code === "TAB_AS_INDENT" ? "a tab" : shown(source.slice(from).split("\n", 1)[0] || "the end of a line");
    tell({ from, path: "" }, read, rightOf(error));
  }
  return told.size > 0;
};

/** A text taken apart: its tree where there is one, and whether it was sound YAML (what is wrong has been told). */
export const parse = (source: string, tell: Tell): { readonly tree?: Tree; readonly sound: boolean } => {
  if (isBeyondReading(source, tell)) return { sound: false };
  const isStrange = tellStrange(source, tell);
  // A lone CR ends a line too; LF in its place keeps every offset.
  const text = source.replace(/\r(?!\n)/g, "\n");
  const document = parseDocument(text, { uniqueKeys: false, prettyErrors: false, logLevel: "error" });
  const sound = !tellSyntax(document, text, tell);
  const tree = treeOf(document, text, sound ? tell : () => undefined);
  if (sound && !isStrange) tellControls(tree, tell);
  return { tree, sound };
};
