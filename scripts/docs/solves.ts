/** A puzzle of our own that singles alone don't solve, so that what they leave is settled by what-ifs. */
export const millPond = `puzzle: 1
title: Mill Pond
grids:
  - { id: main, size: 9 }
givens:
  main: |
    .57..8...
    ....3....
    ......186
    ..6....5.
    .....58.9
    73.......
    ..98.1..4
    2.1.....7
    ....6....
`;

export const singles: readonly string[] = ["last-cell", "only-place", "only-digit"];
