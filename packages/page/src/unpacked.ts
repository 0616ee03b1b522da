import { fromBase85 } from "@solvewright/press";

/** A text that the page carries packed (press's `packed`). */
export const unpacked = (packed: string): Promise<string> =>
  new Response(new Blob([fromBase85(packed)]).stream().pipeThrough(new DecompressionStream("gzip"))).text();
