/** The page's helper, in a worker of its own. */
import type { Answered, Posted } from "./asks.ts";
import { helperFor } from "./helper.ts";

const reply = helperFor();

const answer = ({ id, ...ask }: Posted): Answered => {
  try {
    return { id, ...reply(ask) };
  } catch (error) {
    return { id, failed: String(error) };
  }
};

self.onmessage = ({ data }: MessageEvent<Posted>): void => self.postMessage(answer(data));
