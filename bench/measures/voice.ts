import { spawnSync } from "node:child_process";
import type { Plan } from "@solvewright/engine";
import { readWav } from "@solvewright/press";
import { speaking, usualPace } from "../../packages/engine/src/order/pace.ts";
import { wordsIn } from "../../packages/engine/src/speech/line.ts";
import type { Options } from "../options.ts";
import { isOnPath } from "../peers/native.ts";
import { planTimed } from "../proving.ts";
import { caseIn, filesByFamily } from "../puzzles.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

const program = "espeak-ng";

/** Everything that is said in a show, as one text. */
const spoken = ({ rules, acts }: Plan): string =>
  [
    ...rules.lines.map(({ say }) => say),
    ...acts.flatMap(({ open, close, beats }) => [
      open,
      ...beats.flatMap(({ pause, say }) => [pause?.say ?? "", say]),
      close,
    ]),
  ]
    .filter((text) => text !== "")
    .join("\n");

/** How long the voice takes at so many words a minute, in seconds. */
const voiced = (text: string, wordsAMinute: number): number => {
  const { stdout, status } = spawnSync(program, ["-s", String(wordsAMinute), "--stdin", "--stdout"], {
    input: text,
    maxBuffer: 1 << 30,
  });
  const sound = status === 0 ? readWav(stdout) : undefined;
  if (!sound) throw new Error(`${program} has not spoken`);
  return sound.samples.length / sound.rate;
};

async function* rows(options: Options): AsyncGenerator<Row> {
  if (!isWanted("voice", options)) return;
  if (!isOnPath(program)) {
    const why = `${program} is not on the PATH, so planned seconds can't be held against a voice`;
    yield { measure: "voice", of: "all", figures: { "left out": why } };
    return;
  }
  for (const [family, files] of filesByFamily(options.cases)) {
    if (/^(none|several)$/.test(family)) continue;
    const text = spoken(planTimed(caseIn(files[0]!).board).plan);
    const words = wordsIn(text);
    const [planned, voice] = [speaking(words, usualPace), voiced(text, usualPace.wordsAMinute)];
    yield {
      measure: "voice",
      of: family,
      figures: { words, "planned s": planned, "voice s": voice, "planned / voice": planned / voice },
    };
  }
}

export const voice: Measure = {
  name: "voice",
  about:
    "Seconds planned for the words of a show, and those that espeak-ng takes at the same words a minute (order/pace.ts).",
  rows,
};
