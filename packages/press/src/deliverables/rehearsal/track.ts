/** One spoken line as samples, and when it begins in seconds. */
export interface Clip {
  readonly from: number;
  readonly samples: Int16Array;
}

/** Sound as a voice gives it: one channel of 16 bits. */
export interface Sound {
  readonly rate: number;
  readonly samples: Int16Array;
}

/** Reads a WAV file (RIFF, PCM, one channel, 16 bits); undefined where it is none. */
export const readWav = (bytes: Uint8Array): Sound | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tag = (at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));
  if (bytes.length < 44 || tag(0) !== "RIFF" || tag(8) !== "WAVE") return undefined;
  if (view.getUint16(20, true) !== 1 || view.getUint16(22, true) !== 1 || view.getUint16(34, true) !== 16)
    return undefined;
  let at = 12;
  while (at + 8 <= bytes.length && tag(at) !== "data") at += 8 + view.getUint32(at + 4, true);
  const count = Math.floor((bytes.length - at - 8) / 2);
  if (count <= 0) return undefined;
  return {
    rate: view.getUint32(24, true),
    samples: Int16Array.from({ length: count }, (_, k) => view.getInt16(at + 8 + 2 * k, true)),
  };
};

/** Lines on one track, each at its time or, where the one before is not over, right behind it. */
export const trackOf = (clips: readonly Clip[], rate: number, seconds: number): Int16Array => {
  let free = 0;
  const starts = clips.map(({ from, samples }) => {
    const start = Math.max(free, Math.round(from * rate));
    free = start + samples.length;
    return start;
  });
  const track = new Int16Array(Math.max(Math.ceil(seconds * rate), free));
  for (const [k, { samples }] of clips.entries()) track.set(samples, starts[k]!);
  return track;
};

/** The same as a WAV file. */
export const writeWav = (samples: Int16Array, rate: number): Uint8Array => {
  const bytes = new Uint8Array(44 + 2 * samples.length);
  const view = new DataView(bytes.buffer);
  const tag = (at: number, text: string): void =>
    bytes.set(
      [...text].map((letter) => letter.charCodeAt(0)),
      at,
    );
  tag(0, "RIFF");
  view.setUint32(4, bytes.length - 8, true);
  tag(8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  for (const [at, value] of [
    [20, 1],
    [22, 1],
    [32, 2],
    [34, 16],
  ] as const)
    view.setUint16(at, value, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, 2 * rate, true);
  tag(36, "data");
  view.setUint32(40, 2 * samples.length, true);
  for (const [k, sample] of samples.entries()) view.setInt16(44 + 2 * k, sample, true);
  return bytes;
};
