import type { AssessForm } from "../../schemas/assess.ts";

/** Names the other files that are the same puzzle. */
export const withDuplicates = (forms: readonly AssessForm[]): AssessForm[] => {
  const byName = new Map<string, string[]>();
  for (const { canonical, file } of forms)
    if (canonical !== undefined) byName.set(canonical, [...(byName.get(canonical) ?? []), file]);
  return forms.map((form) => {
    const { sameAs: _, ...rest } = form;
    const others = (byName.get(form.canonical ?? "") ?? []).filter((file) => file !== form.file);
    return others.length > 0 ? { ...rest, sameAs: others } : rest;
  });
};

/** A field that holds a comma, a quote or a line's end is quoted (RFC 4180). */
const field = (value: unknown): string => {
  const text = Array.isArray(value) ? value.join(" ") : value === undefined || value === null ? "" : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

const columns: readonly (readonly [name: string, of: (form: AssessForm) => unknown])[] = [
  ["file", ({ file }) => file],
  ["verdict", ({ verdict }) => verdict],
  ["title", ({ title }) => title],
  ["grids", ({ grids }) => grids],
  ["givens", ({ givens }) => givens],
  ["kinds", ({ kinds }) => kinds],
  ["left_out", ({ leftOut }) => leftOut],
  ["level", ({ level }) => level],
  ["minutes", ({ minutes }) => minutes],
  ["open", ({ open }) => open],
  ["settled_by_level", ({ settled }) => settled],
  ["effort", ({ effort }) => effort],
  ["dependency", ({ dependency }) => dependency],
  ["refutation", ({ refutation }) => refutation],
  ["canonical", ({ canonical }) => canonical],
  ["same_as", ({ sameAs }) => sameAs],
  ["problems", ({ problems }) => problems?.map(({ line, read }) => `line ${line}: ${read}`).join("; ")],
];

/** A table with a head, lines ended as RFC 4180 has them. */
export const csvOf = (forms: readonly AssessForm[]): string =>
  [columns.map(([name]) => name), ...forms.map((form) => columns.map(([, of]) => of(form)))]
    .map((row) => `${row.map(field).join(",")}\r\n`)
    .join("");

export const linesOf = (forms: readonly AssessForm[]): string =>
  forms.map((form) => `${JSON.stringify(form)}\n`).join("");
