import type { Claim } from "../deduce/step.ts";

/** Cells whose grids' lack of digits the claim needs: without it (`holdsWhenWider`) the claim would fail. */
export const limitsOf = (
  candidates: readonly string[],
  claim: Claim,
  holdsWhenWider: (claim: Claim, cell: string) => boolean,
): string[] => candidates.filter((cell) => !holdsWhenWider(claim, cell));
