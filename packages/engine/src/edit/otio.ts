import { shownTree } from "../puzzle/texts.ts";
import { type List, type Scalar, type Tell, type Tree, treeAt } from "../puzzle/tree.ts";
import { jsonTree } from "../take/json-tree.ts";
import { backThrough, type Cutting, type Placed, piecesOf } from "./pieces-of.ts";

/** The part that these keys lead to; undefined where nothing is there. */
const at = (tree: Tree, ...steps: readonly string[]): Tree | undefined => {
  let part: Tree | undefined = tree;
  for (const step of steps) {
    const next: Tree = part && part.shape !== "scalar" ? treeAt(part, [step]) : tree;
    part = part && next !== part && part.shape !== "scalar" ? next : undefined;
  }
  return part?.shape === "scalar" && part.value === null ? undefined : part;
};
const valueAt = (tree: Tree, ...steps: readonly string[]): unknown => (at(tree, ...steps) as Scalar | undefined)?.value;
const itemsAt = (tree: Tree, ...steps: readonly string[]): readonly Tree[] => {
  const list = at(tree, ...steps);
  return list?.shape === "list" ? (list as List).items : [];
};
/** "Clip" of "Clip.2": versions differ in parts that are not read here. */
const schemaOf = (tree: Tree): string => String(valueAt(tree, "OTIO_SCHEMA") ?? "").replace(/\.\d+$/, "");

/** Seconds of a RationalTime; undefined, and told, where it is none. */
const secondsOf = (tree: Tree | undefined, where: Tree, tell: Tell): number | undefined => {
  const [value, rate] = tree ? [valueAt(tree, "value"), valueAt(tree, "rate")] : [];
  if (typeof value === "number" && typeof rate === "number" && rate > 0) return value / rate;
  return tell(tree ?? where, tree ? shownTree(tree) : "no time", "a RationalTime: a value and a rate above 0");
};

/** The media of a clip: of several (Clip.2) the one in use. */
const mediaOf = (clip: Tree): Tree | undefined => {
  const key = valueAt(clip, "active_media_reference_key");
  return typeof key === "string" ? at(clip, "media_references", key) : at(clip, "media_reference");
};

const isTimed = (tree: Tree): boolean => /TimeWarp|FreezeFrame|TimeEffect/.test(schemaOf(tree));

interface Item {
  /** Seconds that it takes on the track. */
  readonly long: number;
  readonly placed?: Omit<Placed, "at">;
  /** Where the slate flashes, in the media's seconds. */
  readonly slate?: number;
}

const slateIn = (item: Tree, tell: Tell): number | undefined => {
  const marker = itemsAt(item, "markers").find((tree) => /^slate$/i.test(String(valueAt(tree, "name") ?? "").trim()));
  return marker && secondsOf(at(marker, "marked_range", "start_time"), marker, tell);
};

const nameOf = (clip: Tree, media: Tree | undefined): string =>
  String((media && (valueAt(media, "target_url") ?? valueAt(media, "name"))) ?? valueAt(clip, "name") ?? "");

const clipIn = (clip: Tree, tell: Tell): Item | undefined => {
  const media = mediaOf(clip);
  const range = at(clip, "source_range") ?? (media && at(media, "available_range"));
  const from = secondsOf(range && at(range, "start_time"), clip, tell);
  const long = secondsOf(range && at(range, "duration"), clip, tell);
  if (from === undefined || long === undefined) return undefined;
  const begins = (media && at(media, "available_range", "start_time")) ?? undefined;
  const zero = begins ? (secondsOf(begins, clip, tell) ?? 0) : 0;
  for (const effect of itemsAt(clip, "effects"))
    if (isTimed(effect)) tell(effect, schemaOf(effect), "a recording at its own speed");
  const slate = slateIn(clip, tell);
  const placed = { media: nameOf(clip, media), from: from - zero, to: from - zero + long, spot: clip };
  return {
    long,
    ...(valueAt(clip, "enabled") === false ? {} : { placed }),
    ...(slate === undefined ? {} : { slate: slate - zero }),
  };
};

/** A part of a track: a clip, or something that only takes its time. */
const itemIn = (item: Tree, tell: Tell): Item => {
  const schema = schemaOf(item);
  if (schema === "Transition") return { long: 0 };
  if (schema === "Clip") return clipIn(item, tell) ?? { long: 0 };
  return { long: secondsOf(at(item, "source_range", "duration"), item, tell) ?? 0 };
};

const right = "an OpenTimelineIO timeline with a track of clips";

/** The first track of pictures that has something in it, or else of sound. */
const trackIn = (timeline: Tree): Tree | undefined => {
  const tracks = itemsAt(timeline, "tracks", "children").filter((track) =>
    itemsAt(track, "children").some((item) => schemaOf(item) === "Clip"),
  );
  return tracks.find((track) => valueAt(track, "kind") === "Video") ?? tracks[0];
};

/**
 * Reads an OpenTimelineIO file (its JSON). A recording begins where its media's available range does. A marker named
 * "slate", on a clip or on the whole, says where the slate flashes.
 */
export const readOtio = (source: string, tell: Tell): Cutting => {
  const timeline = jsonTree(source, tell);
  if (!timeline) return { edit: [] };
  const track = trackIn(timeline);
  if (!track) return tell(timeline, schemaOf(timeline) || "no timeline", right) ?? { edit: [] };
  const trimmed = at(track, "source_range");
  if (trimmed) tell(trimmed, "a trimmed track", "a track that is shown in full");
  let now = 0;
  const placed: Placed[] = [];
  let slate: number | undefined;
  for (const child of itemsAt(track, "children")) {
    const item = itemIn(child, tell);
    if (item.placed) placed.push({ ...item.placed, at: now });
    slate ??= item.slate;
    now += item.long;
  }
  const edit = piecesOf(placed, tell);
  const onWhole = slateIn(at(timeline, "tracks")!, tell);
  slate ??= onWhole === undefined ? undefined : backThrough(edit, onWhole);
  return { edit, ...(slate === undefined ? {} : { slate }) };
};
