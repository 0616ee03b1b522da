import { type Cutting, type Edit, followedBy, shiftedBy, type Take } from "@solvewright/engine";

/** What was said, and when, in seconds of the recording. */
export interface SpokenWord {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** What is known of how a show was recorded, cut and published. */
export interface Recorded {
  readonly take?: Take;
  readonly cutting?: Cutting;
  /** What was said: words with their times in the recording, or a text without times. */
  readonly transcript?: { readonly words: readonly SpokenWord[] } | { readonly text: string };
  /** Where the video can be watched: a web address in which `{seconds}` stands for a time. */
  readonly address?: string;
}

/** How a recording is carried over to the video; as it is where nothing was cut. */
export const recordingToVideo = ({ cutting }: Recorded): Edit => cutting?.edit ?? shiftedBy(0);

/** Seconds by which a recording's clock runs ahead of its take's: where it isn't said, it begins at the slate. */
export const takeToRecording = ({ cutting }: Recorded, take: Take): number => (cutting?.slate ?? 0) - take.slate;

/** How a take's clock is carried over to the video's. */
export const takeToVideo = (recorded: Recorded, take: Take): Edit =>
  followedBy(shiftedBy(takeToRecording(recorded, take)), recordingToVideo(recorded));
