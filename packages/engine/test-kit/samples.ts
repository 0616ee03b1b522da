const file = (title: string, rest: string): string =>
  `puzzle: 1\ntitle: ${title}\nsetter: { name: us, permission: own }\n${rest.replace(/^\n/, "")}`;

/** Six small puzzles of our own, each with one solution, that between them use many sorts of clue and of grid. */
export const samples: readonly { readonly name: string; readonly text: string }[] = [
  {
    name: "Tide Table",
    text: `
grids:
  - { id: main, size: 6, digits: "0-5" }
givens: { cells: { r4c4: 1, r5c5: 1, r6c1: 5 } }
rules:
  - thermometer: [r1c1 r2c1 r3c2, r6c6 r5c6 r4c5]
  - little-killer: [{ cells: r1c3 r2c2 r3c1, sum: 8 }, { cells: r6c4 r5c5 r4c6, sum: 10 }]
  - cage: [{ cells: r3c3 r3c4, sum: 3 }, { cells: r4c3 r4c4, sum: 3 }]
`,
  },
  {
    name: "Crooked Lanes",
    text: `
grids:
  - id: main
    size: 5
    regions: |
      aaabb
      aabbb
      ccdde
      ccdde
      cdeee
givens: { cells: { r2c1: 2, r3c2: 3, r3c4: 4, r5c1: 5 } }
rules:
  - even: r2c2
  - same-sum: { areas: [r1c4 r1c5, r5c1 r5c2] }
  - parity-line: [r3c3 r4c3]
`,
  },
  {
    name: "Two Sheds",
    text: `
grids:
  - { id: small, called: the small shed, size: 4 }
  - { id: big, called: the big shed, size: 6, at: r3c3 }
givens: { cells: { r1c1: 2, r2c4: 3, r3c5: 5, r4c1: 1, r4c7: 1, r6c4: 4, r6c7: 2, r8c7: 6 } }
rules:
  - palindrome: r1c1 r2c2 r3c2
  - cage: [{ cells: r3c5 r4c5, sum: 11 }, { cells: r5c7 r5c8 r6c8, sum: 13 }, { cells: r8c3 r8c4, sum: 6 }]
  - kropke-white: [r5c5 r5c6]
`,
  },
  {
    name: "Roof Line",
    text: `
grids:
  - { id: main, size: 6 }
givens: { cells: { r1c5: 2, r2c1: 3, r3c6: 3, r5c5: 1 } }
rules:
  - skyscraper: [{ row: 1, from: left, sees: 3 }, { row: 2, from: right, sees: 1 }]
  - skyscraper: [{ column: 3, from: top, sees: 1 }, { column: 6, from: bottom, sees: 4 }]
  - sandwich: [{ row: 4, from: left, sum: 3 }, { row: 6, from: left, sum: 0 }, { column: 2, from: top, sum: 9 }]
`,
  },
  {
    name: "Stable Yard",
    text: `
grids:
  - { id: main, size: 6 }
givens: { cells: { r2c6: 4, r3c3: 3, r6c2: 5, r6c5: 2 } }
rules:
  - anti-knight
  - greater-than: [r3c4 r3c3, r4c4 r4c3]
`,
  },
  {
    name: "Marsh Path",
    text: `
grids:
  - { id: main, size: 6 }
givens: { cells: { r2c5: 1, r2c6: 2, r3c4: 1, r4c5: 5, r6c5: 3 } }
rules:
  - renban: [r1c2 r2c2 r3c1, r4c6 r5c6 r6c5]
  - whisper: { cells: r3c3 r4c3 r4c4, by: 3 }
  - quadruple: { at: r2c4, digits: [2, 4] }
`,
  },
].map(({ name, text }) => ({ name, text: file(name, text) }));
