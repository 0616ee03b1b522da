import type { ShownKind } from "./shown-kinds.ts";

const entry = ({ name, title, sentence }: ShownKind): string => `## ${name}

${title}. ${sentence}

| the clue | obeys | breaks it |
|---|---|---|
| ![${name}](gallery/${name}.svg) | ![a filling that obeys ${name}](gallery/${name}-obeys.svg) | ![a filling that breaks ${name}](gallery/${name}-breaks.svg) |
`;

export const galleryPage = (shown: readonly ShownKind[]): string => `# The gallery

Every kind of rule as it is drawn, with a filling that obeys it and one that breaks only it. How each is written in a file:
[format.md](format.md). Made from the registry of rules by \`npm run docs\`.

${shown.map(entry).join("\n")}`;

export const galleryPictures = (shown: readonly ShownKind[]): [name: string, text: string][] =>
  shown.flatMap(({ name, pictures }): [string, string][] => [
    [`docs/gallery/${name}.svg`, pictures.clue],
    [`docs/gallery/${name}-obeys.svg`, pictures.obeys],
    [`docs/gallery/${name}-breaks.svg`, pictures.breaks],
  ]);
