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

/**
 * "The North Wind and the Sun", a fable of Aesop's in the words in which the International Phonetic Association has
 * speakers of English read it (Handbook of the IPA, 1999): 113 words. Written down from memory.
 */
const passage = `The North Wind and the Sun were disputing which was the stronger, when a traveler came along wrapped in a warm
cloak. They agreed that the one who first succeeded in making the traveler take his cloak off should be considered stronger
than the other. Then the North Wind blew as hard as he could, but the more he blew the more closely did the traveler fold
his cloak around him; and at last the North Wind gave up the attempt. Then the Sun shined out warmly, and immediately the
traveler took off his cloak. And so the North Wind was obliged to confess that the Sun was the stronger of the two.`;

/** How long the voice takes at a setting, which it calls words a minute, in seconds. */
const voiced = (text: string, setting: number): number => {
  const { stdout, status } = spawnSync(program, ["-s", String(setting), "--stdin", "--stdout"], {
    input: text,
    maxBuffer: 1 << 30,
  });
  const sound = status === 0 ? readWav(stdout) : undefined;
  if (!sound) throw new Error(`${program} has not spoken`);
  return sound.samples.length / sound.rate;
};

const [slowest, fastest] = [80, 450];

/** The setting at which the voice really reads the passage at so many words a minute: its own count is not to be relied on. */
const settingFor = (wordsAMinute: number): number => {
  const wanted = (wordsIn(passage) * 60) / wordsAMinute;
  let [slow, fast] = [slowest, fastest];
  while (fast - slow > 1) {
    const middle = Math.floor((slow + fast) / 2);
    if (voiced(passage, middle) > wanted) slow = middle;
    else fast = middle;
  }
  return fast;
};

async function* rows(options: Options): AsyncGenerator<Row> {
  if (!isWanted("voice", options)) return;
  if (!isOnPath(program)) {
    const why = `${program} is not on the PATH, so planned seconds can't be held against a voice`;
    yield { measure: "voice", of: "all", figures: { "left out": why } };
    return;
  }
  const setting = settingFor(usualPace.wordsAMinute);
  for (const [family, files] of filesByFamily(options.cases)) {
    if (/^(none|several)$/.test(family)) continue;
    const text = spoken(planTimed(caseIn(files[0]!).board).plan);
    const words = wordsIn(text);
    const planned = speaking(words, usualPace);
    const [voice, nominal] = [voiced(text, setting), voiced(text, usualPace.wordsAMinute)];
    yield {
      measure: "voice",
      of: family,
      figures: {
        words,
        "planned s": planned,
        "voice s": voice,
        "planned / voice": planned / voice,
        "voice's setting": setting,
        "planned / voice set to the pace": planned / nominal,
      },
    };
  }
}

export const voice: Measure = {
  name: "voice",
  about:
    "Seconds planned for the words of a show (order/pace.ts), and those that espeak-ng takes where it reads a phonetician's " +
    "passage at the same words a minute. Set to that number itself, it reads any text quicker, the passage too.",
  rows,
};
