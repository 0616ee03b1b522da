import type { Asked, ExitCode } from "../../command.ts";
import type { LineForm } from "../../schemas/check-line.ts";
import type { Thread } from "../../threads.ts";
import { judgeLines, type LineResult } from "./judge-lines.ts";
import { linesIn, type NumberedLine } from "./lines-file.ts";

/** Lines that a thread is asked for at a time. */
const share = 256;

const sharesOf = (lines: readonly NumberedLine[]): (readonly NumberedLine[])[] =>
  Array.from({ length: Math.ceil(lines.length / share) }, (_, k) => lines.slice(k * share, (k + 1) * share));

/** Where there are no other threads, this one does it. */
const here = ({ stopped }: Asked): Thread => ({
  ask: async (texts) => judgeLines(texts as string[], stopped),
  end: () => {},
});

const threadsFor = (asked: Asked, shares: number): Thread[] => {
  const { threads } = asked;
  if (!threads) return [here(asked)];
  return Array.from({ length: Math.min(threads.count, shares) }, () => threads.start("judge-lines"));
};

/** Has all shares judged; `tell` hears of each as it is done. */
const judged = async (
  shares: readonly (readonly NumberedLine[])[],
  asked: Asked,
  tell: (share: number, results: readonly LineResult[]) => void,
): Promise<void> => {
  let next = 0;
  const lane = async (thread: Thread): Promise<void> => {
    while (next < shares.length && !asked.stopped()) {
      const mine = next++;
      tell(mine, (await thread.ask(shares[mine]!.map(({ text }) => text))) as LineResult[]);
    }
  };
  const threads = threadsFor(asked, shares.length);
  try {
    await Promise.all(threads.map(lane));
  } finally {
    for (const thread of threads) thread.end();
  }
};

const formOf = ({ number }: NumberedLine, { verdict, solutions }: LineResult): LineForm => ({
  line: number,
  verdict,
  solutions: [...solutions],
});

const grouped = (count: number): string => count.toLocaleString("en");

const verdictsSaid = (count: number, counts: ReadonlyMap<string, number>): string => {
  const of = (verdict: string): number => counts.get(verdict) ?? 0;
  if (of("one") === count) return count === 1 ? "it has exactly one solution" : "each has exactly one solution";
  return `${grouped(of("one"))} with exactly one solution, ${grouped(of("several"))} with several, ${grouped(of("none"))} with none`;
};

/** Judges a file of plain lines on all cores; a JSON line for each, in the order of the file. */
export const checkLines = async (file: string, asked: Asked): Promise<ExitCode> => {
  const { out } = asked;
  const start = performance.now();
  const lines = await linesIn(file);
  const shares = sharesOf(lines);
  const counts = new Map<string, number>();
  const waiting = new Map<number, readonly LineResult[]>();
  let done = 0;
  let printed = 0;
  const print = (k: number): void => {
    const results = waiting.get(k)!;
    waiting.delete(k);
    if (results.length > 0)
      out.line(results.map((result, i) => JSON.stringify(formOf(shares[k]![i]!, result))).join("\n"));
  };
  await judged(shares, asked, (k, results) => {
    waiting.set(k, results);
    for (const { verdict } of results) counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
    done += results.length;
    while (waiting.has(printed)) print(printed++);
    out.progress("Checking lines", `${grouped(done)} of ${grouped(lines.length)}`);
  });
  for (const k of [...waiting.keys()].sort((a, b) => a - b)) print(k);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  const isStopped = done < lines.length;
  out.note(
    `${isStopped ? `Stopped after ${grouped(done)} of ${grouped(lines.length)}` : grouped(done)} ${done === 1 ? "grid" : "grids"} in ${seconds} s: ${verdictsSaid(done, counts)}.`,
  );
  if (isStopped) return 3;
  return counts.get("one") === lines.length ? 0 : 1;
};
