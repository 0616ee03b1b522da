/** Small puzzles of our own that are solved by a few techniques alone, so that each technique has a step to show. */
export interface Solve {
  readonly puzzle: string;
  /** The techniques that may be used; what they leave is settled by what-ifs. */
  readonly by: readonly string[];
}

const nine = (title: string, picture: string): string =>
  `puzzle: 1\ntitle: ${title}\ngrids:\n  - { id: main, size: 9 }\ngivens:\n  main: |\n${picture.replace(/^\n/, "")}`;

const slateRoof = nine(
  "Slate Roof",
  `
    5.....842
    ........9
    428...3..
    .1...4..8
    985......
    .......7.
    ..76.2...
    3.....7..
    ...51...6
`,
);

const millPond = nine(
  "Mill Pond",
  `
    .57..8...
    ....3....
    ......186
    ..6....5.
    .....58.9
    73.......
    ..98.1..4
    2.1.....7
    ....6....
`,
);

const boatHouse = `puzzle: 1
title: Boat House
grids:
  - { id: boat, called: the boat house, size: 6 }
  - { id: jetty, called: the jetty, size: 4, at: r5c2 }
givens: { cells: { r4c2: 3, r5c1: 5, r8c2: 4, r4c5: 6, r2c5: 1, r3c6: 1, r5c4: 4, r2c1: 2 } }
`;

const ridersYard = `puzzle: 1
title: Riders' Yard
grids:
  - { id: main, size: 6 }
givens: { cells: { r6c2: 3, r1c3: 1, r6c4: 2, r4c3: 5, r5c6: 5, r3c2: 4 } }
rules:
  - anti-knight
`;

const tillReceipt = `puzzle: 1
title: Till Receipt
grids:
  - { id: main, size: 6 }
givens: { cells: { r6c5: 4, r4c1: 4, r3c3: 1, r5c5: 5, r3c6: 2 } }
rules:
  - cage: [{ cells: r1c1-r1c3, sum: 11 }, { cells: r1c4 r1c5, sum: 9 }, { cells: r3c1-r5c1, sum: 11 }]
  - cage: [{ cells: r6c4-r6c6, sum: 11 }, { cells: r6c1 r6c2, sum: 8 }]
`;

const stonePath = `puzzle: 1
title: Stone Path
grids:
  - { id: main, size: 6 }
givens: { cells: { r4c6: 2, r6c4: 2, r4c2: 3, r1c2: 5, r5c2: 6, r2c6: 3 } }
rules:
  - cage: [{ cells: r1c1-r1c2, sum: 6 }, { cells: r5c4-r5c5, sum: 7 }, { cells: r3c2-r3c3, sum: 7 }]
  - cage: { cells: r1c4 r2c4, sum: 7 }
`;

const singles = ["last-cell", "only-place", "only-digit"];

/** `examples/rain-gauge` stands first; of each technique the first step found is shown. */
export const solvesAfter = (rainGauge: string): readonly Solve[] => [
  { puzzle: rainGauge, by: [...singles, "clue-forces", "clue-cases", "only-place-by-clues"] },
  { puzzle: boatHouse, by: ["last-cell", "only-digit", "smaller-grid-leaves"] },
  ...["naked-pair", "hidden-pair", "naked-triple", "locked", "hidden-triple", "naked-quad"].map((name) => ({
    puzzle: slateRoof,
    by: [...singles, name],
  })),
  { puzzle: ridersYard, by: [...singles, "seen-everywhere"] },
  { puzzle: tillReceipt, by: [...singles, "clue-forces", "sums-left"] },
  { puzzle: stonePath, by: [...singles, "clue-forces", "clue-cases", "joint-cases"] },
  { puzzle: millPond, by: singles },
];
