import {
  type Board,
  decode,
  mostEditBytes,
  mostTakeBytes,
  type Problem,
  readEdit,
  readTake,
  shiftedBy,
} from "@solvewright/engine";
import { type Recorded, readTranscript } from "@solvewright/press";
import type { Asked } from "./command.ts";
import { badUsage } from "./faults.ts";
import { bytesOf, faultyFile } from "./puzzle-file.ts";

type Reading<Value> = { readonly value?: Value | undefined; readonly problems: readonly Problem[] };

const mostTranscriptBytes = 4 * 1024 * 1024;

/** What a flag's file holds; undefined where the flag is left out. Throws with all that is wrong in the file. */
const fileOf = async <Value>(
  file: string | boolean | undefined,
  most: number,
  read: (text: string) => Reading<Value>,
): Promise<Value | undefined> => {
  if (typeof file !== "string") return undefined;
  const text = decode(await bytesOf(file), most);
  if (typeof text !== "string") throw faultyFile(file, [text]);
  const { value, problems } = read(text);
  if (problems.length > 0) throw faultyFile(file, problems);
  return value;
};

const offsetIn = ({ offset }: Asked["flags"]): number | undefined => {
  if (offset === undefined) return undefined;
  const seconds = String(offset).trim() === "" ? Number.NaN : Number(offset);
  if (seconds >= 0 && seconds <= 86_400) return seconds;
  throw badUsage("--offset takes seconds, such as 12.5.", { read: String(offset), right: "seconds from 0 on" });
};

const addressIn = ({ watch }: Asked["flags"]): string | undefined => {
  if (watch === undefined) return undefined;
  if (/^https?:\/\/[^\s<>"]+$/.test(String(watch)) && String(watch).includes("{seconds}")) return String(watch);
  const right = "a web address such as https://example.org/watch?t={seconds}";
  throw badUsage("--watch takes a web address with {seconds} in it.", { read: String(watch), right });
};

const wantsTake = ({ take, edit, offset, watch, transcript }: Asked["flags"]): string | undefined => {
  if (take !== undefined) return undefined;
  if (edit !== undefined && transcript === undefined) return "--edit";
  if (offset !== undefined) return "--offset";
  return watch === undefined ? undefined : "--watch";
};

/** What the flags say of how the show was recorded, cut and published; undefined where they say nothing. */
export const recordedIn = async ({ flags, out }: Asked, board: Board): Promise<Recorded | undefined> => {
  const lonely = wantsTake(flags);
  if (lonely) throw badUsage(`${lonely} goes with --take.`, { read: lonely, right: "--take FILE beside it" });
  const [offset, address] = [offsetIn(flags), addressIn(flags)];
  const take = await fileOf(flags.take, mostTakeBytes, (text) => {
    const { take: value, problems } = readTake(text, board);
    return { value, problems };
  });
  const cut = await fileOf(flags.edit, mostEditBytes, (text) => {
    const { cutting: value, problems } = readEdit(text);
    return { value, problems };
  });
  const transcript = await fileOf(flags.transcript, mostTranscriptBytes, (text) => {
    const { transcript: value, problems } = readTranscript(text);
    return { value, problems };
  });
  if (take && cut && cut.slate === undefined && offset === undefined)
    out.note("The edit does not say when the slate flashes in the recording: taken as its start. --offset says when.");
  if (transcript && "text" in transcript && !take)
    out.note("A transcript without times needs --take to be spread over: the captions are a draft from the script.");
  const cutting = cut && offset !== undefined ? { ...cut, slate: offset } : cut;
  const alone = take && !cutting && offset !== undefined ? { edit: shiftedBy(0), slate: offset } : cutting;
  if (!take && !alone && !transcript) return undefined;
  return {
    ...(take ? { take } : {}),
    ...(alone ? { cutting: alone } : {}),
    ...(transcript ? { transcript } : {}),
    ...(address ? { address } : {}),
  };
};
