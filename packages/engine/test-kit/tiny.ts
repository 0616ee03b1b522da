interface TinyGrid {
  readonly id?: string;
  readonly size?: number;
  readonly at?: string;
  /** As in the file; 1 to the size where left out. */
  readonly digits?: string;
  readonly regions?: string;
}

const gridText = ({
  id = "tiny",
  size = 4,
  at = "r1c1",
  digits,
  regions = size === 4 ? "boxes" : "none",
}: TinyGrid): string =>
  `  - { id: ${id}, size: ${size}, at: ${at}, regions: ${regions}${digits === undefined ? "" : `, digits: "${digits}"`} }`;

/** A puzzle file of these rules, each a line as it stands in the file, on one 4x4 with boxes or on the grids named. */
export const tiny = (rules: readonly string[], grids: TinyGrid | readonly TinyGrid[] = {}, givens = "{}"): string =>
  [
    "puzzle: 1",
    "title: Tiny",
    "setter: { name: Nobody, permission: own }",
    "grids:",
    ...[grids].flat().map(gridText),
    `givens: { cells: ${givens} }`,
    "rules:",
    ...rules.map((rule) => `  - ${rule}`),
    "",
  ].join("\n");
