import type { Entry, Keys, List, Scalar, Spot, Tell, Tree } from "../puzzle/tree.ts";
import { shown } from "../rules/shown.ts";

/** How deep lists and objects may lie in each other; an editor's file nests tracks, clips and their notes. */
const deepest = 64;

const blanks = /[ \t\r\n]*/y;
const tokens =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: no text of JSON holds one
  /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?|true|false|null/y;

/** Where a text stops being JSON (RFC 8259), and what should stand there. */
class Fault extends Error {
  readonly at: number;
  constructor(at: number, right: string) {
    super(right);
    this.at = at;
  }
}

const joined = (path: string, step: string | number): string => (path === "" ? `${step}` : `${path}/${step}`);

/** The tree of a JSON text, each part with its place. Throws `Fault`. */
const treeIn = (source: string, tell: Tell): Tree => {
  let at = 0;
  const skip = (): void => {
    blanks.lastIndex = at;
    at += blanks.exec(source)![0].length;
  };
  const fail = (right: string): never => {
    throw new Fault(at, right);
  };
  const token = (right: string): string => {
    tokens.lastIndex = at;
    const found = tokens.exec(source)?.[0] ?? fail(right);
    at += found.length;
    return found;
  };
  const scalar = (path: string): Scalar => {
    const spot = { from: at, path };
    const value: unknown = JSON.parse(token("a value: a text in double quotes, a number, a list or an object"));
    return { ...spot, shape: "scalar", value, text: String(value), spotAt: () => spot };
  };
  /** Parts up to the closing sign, with commas between. */
  const parts = <Part>(close: string, part: () => Part): Part[] => {
    const found: Part[] = [];
    at++;
    skip();
    while (source[at] !== close) {
      if (found.length > 0) {
        if (source[at] !== ",") fail(`a comma or ${close}`);
        at++;
        skip();
      }
      found.push(part());
      skip();
    }
    at++;
    return found;
  };
  const entry = (path: string, depth: number): Entry => {
    const from = at;
    const key: unknown =
      source[at] === '"' ? JSON.parse(token("a key in double quotes")) : fail("a key in double quotes");
    skip();
    if (source[at] !== ":") fail("a colon after the key");
    at++;
    const keySpot: Spot = { from, path: joined(path, String(key)) };
    return { key: String(key), keySpot, value: value(keySpot.path, depth) };
  };
  const object = (spot: Spot, depth: number): Keys => {
    const seen = new Set<string>();
    const entries = parts("}", () => entry(spot.path, depth)).filter(({ key, keySpot }) => {
      if (seen.has(key)) tell(keySpot, `the key ${shown(key)} twice`, "each key once");
      return !seen.has(key) && seen.add(key);
    });
    return { ...spot, shape: "keys", entries };
  };
  const value = (path: string, depth: number): Tree => {
    skip();
    if (depth > deepest) fail("lists and objects that are nested less deeply");
    const spot = { from: at, path };
    if (source[at] === "{") return object(spot, depth + 1);
    if (source[at] !== "[") return scalar(path);
    let index = 0;
    return { ...spot, shape: "list", items: parts("]", () => value(joined(path, index++), depth + 1)) } as List;
  };
  const tree = value("", 0);
  skip();
  return at < source.length ? fail("nothing after the end") : tree;
};

const restAt = (source: string, at: number): string =>
  source.slice(at).split(/\r?\n/, 1)[0]!.slice(0, 40).trim() || "the end";

/** The tree of a JSON text (RFC 8259); undefined, and told, where it is none. */
export const jsonTree = (source: string, tell: Tell): Tree | undefined => {
  try {
    return treeIn(source, tell);
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    return tell({ from: fault.at, path: "" }, restAt(source, fault.at), fault.message);
  }
};
