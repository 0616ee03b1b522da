import type { Options } from "../options.ts";
import { caseIn, filesByFamily } from "../puzzles.ts";
import { asked, questionsAbout, questionsEach } from "../questions.ts";
import { median, quantile } from "../turns.ts";
import { coldly } from "./coldly.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

async function* rows(options: Options): AsyncGenerator<Row> {
  for (const [name, files] of filesByFamily(options.cases)) {
    if (!isWanted(`why-${name}`, options) || /^(none|several)$/.test(name)) continue;
    const questions = files.map((file) => caseIn(file)).map(({ board }) => ({ board, all: questionsAbout(board) }));
    const askAll = () => questions.flatMap(({ board, all }) => all.map((question) => asked(board, question)));
    askAll();
    const answers = askAll();
    const times = answers.map(({ ms }) => ms);
    const figures = {
      questions: answers.length,
      "median ms": median(times),
      "95 in 100 ms": quantile(times, 0.95),
      "most ms": Math.max(...times),
      unanswered: answers.filter(({ answer }) => answer === "unknown").length,
      "cold ms": median(files.map((file) => coldly("why", file))),
    };
    yield { measure: "why", of: name, figures };
  }
}

export const why: Measure = {
  name: "why",
  about: `Why can't it be that digit: ${questionsEach} seeded questions about the start of each puzzle, asked once to warm up, then timed. Cold: the first of them in a new process, with reading and judging, the median of the puzzles.`,
  rows,
};
