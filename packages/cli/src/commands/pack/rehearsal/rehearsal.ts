import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Frame, rehearsalFrames, type Show, withoutTurns } from "@solvewright/press";
import { pngOf } from "@solvewright/press/files";
import type { Asked } from "../../../command.ts";
import type { PackFile } from "../folder.ts";
import { runProgram } from "./program.ts";
import { spokenTrack } from "./voice.ts";

type Outcome = PackFile | "stopped" | "missing" | "failed";

const pictureName = (k: number): string => `${String(k).padStart(5, "0")}.png`;

/** The pictures, one for each time that something changes; false once the user asked to stop. */
const drawnIn = async (folder: string, frames: readonly Frame[], { stopped, out }: Asked): Promise<boolean> => {
  for (const [k, frame] of frames.entries()) {
    if (stopped()) return false;
    out.progress("Drawing the rehearsal", `${k + 1} of ${frames.length} pictures`);
    await writeFile(join(folder, pictureName(k)), pngOf(withoutTurns(frame.svg())));
  }
  return true;
};

/** ffmpeg's list of files to be joined; it leaves out how long the last one stands unless that is named twice. */
const listOf = (frames: readonly Frame[]): string => {
  const lines = frames.map(({ from, to }, k) => `file ${pictureName(k)}\nduration ${(to - from).toFixed(3)}`);
  return ["ffconcat version 1.0", ...lines, `file ${pictureName(frames.length - 1)}`, ""].join("\n");
};

const argumentsFor = (folder: string, isSpoken: boolean): string[] => [
  ...["-v", "error", "-y", "-f", "concat", "-safe", "1", "-i", join(folder, "pictures.txt")],
  ...(isSpoken ? ["-i", join(folder, "voice.wav"), "-c:a", "aac", "-b:a", "64k"] : []),
  ...["-vf", "fps=10,format=yuv420p", "-c:v", "libx264", "-preset", "ultrafast", "-tune", "stillimage", "-crf", "20"],
  // One thread and no dates, so that the same show makes the same bytes.
  ...["-threads", "1", "-map_metadata", "-1", "-fflags", "+bitexact", "-flags:v", "+bitexact", "-flags:a", "+bitexact"],
  ...["-movflags", "+faststart", join(folder, "rehearsal.mp4")],
];

const madeIn = async (folder: string, show: Show, asked: Asked): Promise<Outcome> => {
  const frames = rehearsalFrames(show);
  if (!(await drawnIn(folder, frames, asked))) return "stopped";
  const voice = await spokenTrack(show, folder, asked);
  if (asked.stopped()) return "stopped";
  if (voice) await writeFile(join(folder, "voice.wav"), voice);
  await writeFile(join(folder, "pictures.txt"), listOf(frames));
  asked.out.progress("Putting the video together");
  const done = await runProgram("ffmpeg", argumentsFor(folder, voice !== undefined), asked);
  if (done !== 0) return typeof done === "number" ? "failed" : done;
  return {
    name: "rehearsal.mp4",
    purpose: `The running order at its planned times with draft captions${voice ? ", spoken by this machine" : ""}, to rehearse by. Not to be published.`,
    lacks: [],
    content: await readFile(join(folder, "rehearsal.mp4")),
  };
};

/** The rehearsal video, by this machine's own ffmpeg and, where there is one, its voice. */
export const rehearsal = async (show: Show, asked: Asked): Promise<Outcome> => {
  if ((await runProgram("ffmpeg", ["-version"], asked)) === "missing") return "missing";
  const folder = await mkdtemp(join(tmpdir(), "solvewright-rehearsal-"));
  try {
    return await madeIn(folder, show, asked);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
};

export const whyNoVideo = {
  missing:
    "No rehearsal video: there is no ffmpeg on the PATH. Install ffmpeg and ask again; all other files are here.",
  failed: "No rehearsal video: ffmpeg gave up on it. All other files are here.",
} as const;
