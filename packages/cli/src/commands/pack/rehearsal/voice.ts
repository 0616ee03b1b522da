import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { type Clip, readWav, type Show, timesOf, trackOf, writeWav } from "@solvewright/press";
import type { Asked } from "../../../command.ts";
import { runProgram } from "./program.ts";

/** Words a minute, about as a presenter speaks. */
const pace = "165";

/** All lines of a show as sound, each at its planned time; nothing where no voice is on the PATH or the user stopped. */
export const spokenTrack = async (
  show: Show,
  folder: string,
  { stopped, out }: Asked,
): Promise<Uint8Array | undefined> => {
  const { lines } = timesOf(show.plan);
  const clips: Clip[] = [];
  let rate = 0;
  const file = join(folder, "line.wav");
  for (const [k, { text, from }] of lines.entries()) {
    out.progress("Speaking the lines", `${k + 1} of ${lines.length}`);
    const done = await runProgram("espeak-ng", ["-s", pace, "-w", file, "--stdin"], { stopped, input: text });
    if (done !== 0) return undefined;
    const sound = readWav(await readFile(file));
    if (!sound) continue;
    clips.push({ from, samples: sound.samples });
    rate = sound.rate;
  }
  return rate === 0 ? undefined : writeWav(trackOf(clips, rate, show.plan.seconds), rate);
};
