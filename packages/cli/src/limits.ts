import { type Board, claimOf, type Deduction, type definitionOf, prove } from "@solvewright/engine";

/** Placeholder until moved into the engine. */
export const limitsFor =
  (_board: Board, _about: ReturnType<typeof definitionOf>) =>
  (_deduction: Deduction): readonly string[] => {
    void claimOf;
    void prove;
    return [];
  };
