import * as z from "zod/mini";
import type { Canvas } from "../../puzzle/canvas.ts";
import type { Random } from "../../random.ts";
import type { BodyShape, FaultInText, Ground, ReadBody, Turning } from "../body.ts";
import type { Body } from "../contract.ts";
import { nearest, oneOfKeys } from "../nearest.ts";
import { shown } from "../shown.ts";
import { common, type Field } from "./fields.ts";

// biome-ignore lint/suspicious/noExplicitAny: fields of every type stand side by side
export type Fields = Readonly<Record<string, Field<any>>>;
type ValueOf<F> = F extends Field<infer T> ? T : never;
type OptionalKeys<F extends Fields> = { [K in keyof F]: F[K] extends { optional: true } ? K : never }[keyof F];

/** The body that these fields read as. */
export type BodyOf<F extends Fields> = Body & { readonly [K in Exclude<keyof F, OptionalKeys<F>>]: ValueOf<F[K]> } & {
  readonly [K in OptionalKeys<F>]?: ValueOf<F[K]>;
};

interface Spec<F extends Fields> {
  readonly name: string;
  readonly form: string;
  readonly gesture: BodyShape<Body>["gesture"];
  readonly fields: F;
  /** The key that a plain text (or, for `areas`, a list) stands for where it is the only one. */
  readonly terse?: keyof F & string;
  /** Nothing at all may stand behind the kind's name. */
  readonly mayBeEmpty?: boolean;
  /** What the keys must fulfil together. */
  readonly check?: (body: BodyOf<F>, canvas: Canvas) => readonly FaultInText[];
  /** Where turning key by key is not enough. */
  readonly turn?: (body: BodyOf<F>, turning: Turning) => BodyOf<F>;
  /** Where drawing key by key would hardly ever fit. */
  readonly draw?: (random: Random, ground: Ground) => BodyOf<F> | undefined;
  readonly remarks?: BodyShape<BodyOf<F>>["remarks"];
}

const isKeys = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A body of these fields by chance, a key that may be left out in every other one. */
export const drawn = <F extends Fields>(fields: F, random: Random, ground: Ground): BodyOf<F> | undefined => {
  const body: Record<string, unknown> = {};
  for (const [key, field] of Object.entries<Field<unknown>>(fields)) {
    if (field.optional && (!field.draw || random.below(2) === 0)) continue;
    body[key] = field.draw!(random, ground);
    if (body[key] === undefined) return undefined;
  }
  return body as BodyOf<F>;
};

/** A body shape from its fields: reading, writing, turning and the schema all follow from them. */
export const shapeOf = <F extends Fields>(spec: Spec<F>): BodyShape<BodyOf<F>> => {
  const fields: Fields = { ...spec.fields, ...common };
  const names = Object.keys(fields);
  const form = Object.entries(spec.fields)
    .map(([key, field]) => (field.optional ? `${key}?` : key))
    .join(", ");

  const readKeys = (keys: Record<string, unknown>, canvas: Canvas, terse: boolean): Omit<ReadBody<BodyOf<F>>, "at"> => {
    const faults: FaultInText[] = [];
    const body: Record<string, unknown> = {};
    const strange = Object.keys(keys).filter((key) => !Object.hasOwn(fields, key));
    const meant = strange.map((key) => nearest(key, names));
    for (const key of strange) faults.push({ at: [key], atKey: true, read: shown(key), right: oneOfKeys(key, names) });
    for (const [key, field] of Object.entries(fields)) {
      if (!Object.hasOwn(keys, key)) {
        if (!field.optional && !meant.includes(key))
          faults.push({ read: shown(keys), right: `the key ${key} as well: { ${form} }` });
        continue;
      }
      const read = field.read(keys[key], canvas);
      if (read.value !== undefined) body[key] = read.value;
      faults.push(...read.faults.map((fault) => ({ ...fault, at: [...(terse ? [] : [key]), ...(fault.at ?? [])] })));
    }
    if (faults.length > 0) return { faults };
    const whole = body as BodyOf<F>;
    return { body: whole, faults: spec.check?.(whole, canvas) ?? [] };
  };

  const readOne = (value: unknown, canvas: Canvas): Omit<ReadBody<BodyOf<F>>, "at"> => {
    if (isKeys(value)) return readKeys(value, canvas, false);
    if (value === null && spec.mayBeEmpty) return readKeys({}, canvas, false);
    if (value === null) return { faults: [{ read: "nothing", right: spec.form }] };
    if (spec.terse) return readKeys({ [spec.terse]: value }, canvas, true);
    return { faults: [{ read: shown(value), right: spec.form }] };
  };

  const draw = (random: Random, ground: Ground): BodyOf<F> | undefined => {
    const body = spec.draw ? spec.draw(random, ground) : drawn(spec.fields, random, ground);
    return body && (spec.check?.(body, ground.canvas) ?? []).length === 0 ? body : undefined;
  };
  const isDrawn = Object.values<Field<unknown>>(spec.fields).every((field) => field.optional || field.draw);

  const keysSchema = z.strictObject(
    Object.fromEntries(
      names.map((key) => [key, fields[key]!.optional ? z.optional(fields[key]!.schema) : fields[key]!.schema]),
    ),
  );
  const one = spec.terse ? z.union([fields[spec.terse]!.schema, keysSchema]) : keysSchema;

  return {
    name: spec.name,
    form: spec.form,
    gesture: spec.gesture,
    mayBeEmpty: spec.mayBeEmpty ?? false,
    ...(spec.remarks ? { remarks: spec.remarks } : {}),
    ...(isDrawn || spec.draw ? { draw } : {}),
    schema: z.union([...(spec.mayBeEmpty ? [z.null()] : []), one, z.array(one)]),
    read: (value, canvas) =>
      Array.isArray(value) && value.length > 0
        ? value.map((item, k) => ({ at: [k], ...readOne(item, canvas) }))
        : [{ at: [], ...readOne(value, canvas) }],
    write: (body) => {
      const keys = Object.entries(body).filter(([, value]) => value !== undefined);
      if (keys.length === 0 && spec.mayBeEmpty) return null;
      const [first] = keys;
      if (keys.length === 1 && first![0] === spec.terse) return fields[first![0]]!.write(first![1]);
      return Object.fromEntries(keys.map(([key, value]) => [key, fields[key]!.write(value)]));
    },
    turn: (body, turning) =>
      spec.turn?.(body, turning) ??
      (Object.fromEntries(
        Object.entries(body).map(([key, value]) => [key, fields[key]!.turn(value, turning)]),
      ) as BodyOf<F>),
  };
};
