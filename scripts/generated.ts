/** The documentation that is made from the registries, as file name and text: written by docs.ts, held by a test. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { compile, kinds, schemaOf } from "@solvewright/engine";
import { boardSvg } from "@solvewright/press";
import { cases } from "../packages/engine/test-kit/kind-files.ts";
import { puzzleOf } from "../packages/engine/test-kit/puzzles.ts";

const part = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../docs/parts/${name}`, import.meta.url)), "utf8");

interface Shown {
  readonly name: string;
  readonly form: string;
  readonly sentence: string;
  /** The lines of the example's file that bring the rule. */
  readonly source: string;
  readonly pictures: { readonly clue: string; readonly obeys: string; readonly breaks: string };
}

/** Cell name to digit, from the rows of a filling. */
const digitsIn = (names: readonly string[], filling: string): Record<string, number> => {
  const digits = filling
    .trim()
    .split("\n")
    .flatMap((line) => (/\s/.test(line.trim()) ? line.trim().split(/\s+/) : [...line.trim()]))
    .map(Number);
  return Object.fromEntries(names.map((name, k) => [name, digits[k]!]));
};

const shownOf = (name: string, form: string): Shown => {
  const { example } = cases.get(name)!;
  const board = compile(puzzleOf(example.puzzle));
  const { kind, instance } = board.rules.find((rule) => rule.kind.name === name)!;
  const picture = (filling?: string): string =>
    boardSvg(board, {
      cell: 36,
      painted: true,
      ground: "page",
      ...(filling ? { written: { settled: digitsIn(board.canvas.names, filling) } } : {}),
    });
  return {
    name,
    form,
    sentence: kind.words(instance).rule,
    source: example.puzzle.slice(example.puzzle.indexOf("rules:")).trim(),
    pictures: { clue: picture(), obeys: picture(example.obeys), breaks: picture(example.breaks) },
  };
};

const formatEntry = ({ name, form, sentence, source }: Shown): string =>
  `### ${name}\n\n${sentence}\n\nBody: ${form}.\n\n\`\`\`yaml\n${source}\n\`\`\`\n`;

const galleryEntry = ({ name, sentence }: Shown): string =>
  `## ${name}\n\n${sentence}\n\n| the clue | obeys | breaks it |\n|---|---|---|\n| ![${name}](gallery/${name}.svg) | ![a filling that obeys ${name}](gallery/${name}-obeys.svg) | ![a filling that breaks ${name}](gallery/${name}-breaks.svg) |\n`;

/** Every generated file, by its name from the root of the project. */
export const generated = async (): Promise<ReadonlyMap<string, string>> => {
  const shown = kinds.map(({ name, body }) => shownOf(name, body.form));
  return new Map([
    ["docs/schema/puzzle.schema.json", `${JSON.stringify(schemaOf(), null, 2)}\n`],
    ["docs/format.md", `${part("format-head.md")}\n${shown.map(formatEntry).join("\n")}`],
    [
      "docs/gallery.md",
      `# The gallery\n\nEvery kind of rule, as it is drawn. Made by \`npm run docs\`.\n\n${shown.map(galleryEntry).join("\n")}`,
    ],
    ...shown.flatMap(({ name, pictures }): [string, string][] => [
      [`docs/gallery/${name}.svg`, pictures.clue],
      [`docs/gallery/${name}-obeys.svg`, pictures.obeys],
      [`docs/gallery/${name}-breaks.svg`, pictures.breaks],
    ]),
  ]);
};
