import {
  type Alias,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  type Scalar as YamlScalar,
} from "yaml";
import { shown } from "../rules/shown.ts";
import type { Entry, Scalar, Spot, Tell, Tree } from "./tree.ts";

/** How deep lists and keys may lie in each other; the deepest form of the format needs seven. */
export const deepest = 16;
export const tooDeep = "lists and keys that are nested less deeply";
/** How many times a file may repeat a part by `*name`; what is repeated holds no repetition itself. */
const mostAliases = 16;
/** How many lists, keys and single values these repetitions may come to, all in all. */
const mostRepeated = 1000;

const partsOf = (tree: Tree): number => {
  if (tree.shape === "list") return tree.items.reduce((sum, item) => sum + partsOf(item), 1);
  if (tree.shape === "keys") return tree.entries.reduce((sum, { value }) => sum + 1 + partsOf(value), 1);
  return 1;
};

const joined = (path: string, step: string | number): string => (path === "" ? `${step}` : `${path}/${step}`);

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
export const treeOf = (document: Document, source: string, tell: Tell): Tree => {
  let aliases = 0;
  let parts = 0;
  const known = new Map<Node, Tree>();
  const nothing = (spot: Spot): Scalar => scalarOf(undefined, spot, source);

  const repeated = (node: Alias, spot: Spot, depth: number, isRepeated: boolean): Tree => {
    const right = "the part written out; few can be repeated by name";
    // Looking one up goes through the whole document, so it is not done for the many.
    if (++aliases > mostAliases)
      return (aliases === mostAliases + 1 ? tell(spot, `*${node.source}`, right) : undefined) ?? nothing(spot);
    const target = isRepeated ? undefined : node.resolve(document);
    if (target) {
      const tree = known.get(target) ?? read(target, { ...spot, from: target.range?.[0] ?? spot.from }, depth, true);
      known.set(target, tree);
      parts += partsOf(tree);
      return parts > mostRepeated ? (tell(spot, `*${node.source}`, right) ?? nothing(spot)) : tree;
    }
    return tell(spot, `*${node.source}`, isRepeated ? right : "a name that an & gives before") ?? nothing(spot);
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
    if (depth > deepest) return tell(spot, "lists in lists in lists", tooDeep) ?? nothing(spot);
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
  return read(document.contents as Node | null, { from: 0, path: "" }, 0, false);
};
