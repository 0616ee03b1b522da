import { type LineVerdict, lineJudge, type PlainLine, readPlainLine } from "@solvewright/engine";

export interface LineResult {
  readonly verdict: LineVerdict["verdict"];
  /** Up to two, as lines of digits. */
  readonly solutions: readonly string[];
}

type Judge = ReturnType<typeof lineJudge>;

const finishedUnless = (work: ReturnType<Judge>, stopped: () => boolean): LineVerdict | undefined => {
  while (!stopped()) {
    const step = work.next();
    if (step.done) return step.value;
  }
  return undefined;
};

/** Judges lines that can be read, from the first as far as it comes before it is to stop. */
export const judgeLines = (texts: readonly string[], stopped: () => boolean): LineResult[] => {
  const judges = new Map<number, Judge>();
  const judgeOf = (size: number): Judge => {
    if (!judges.has(size)) judges.set(size, lineJudge(size));
    return judges.get(size)!;
  };
  const results: LineResult[] = [];
  for (const text of texts) {
    const line = readPlainLine(text) as PlainLine;
    const found = finishedUnless(judgeOf(line.size)(line), stopped);
    if (!found) break;
    results.push({ verdict: found.verdict, solutions: found.solutions.map((solution) => solution.join("")) });
  }
  return results;
};
