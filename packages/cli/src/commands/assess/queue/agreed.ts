/** What both sides of a queue agree on: they who ask and they who answer. */
import type { Queue } from "bullmq";
import type { Link } from "./link.ts";

/** What a worker is asked: a puzzle file's text, and the SHA-256 of its bytes. */
export interface Errand {
  readonly sha256: string;
  readonly text: string;
}

/** How long anything lies on a Redis once nobody asks for it any more, in seconds. */
export const lifetime = 3600;

export const prefix = "solvewright";

/** Other builds may judge otherwise, so each has a queue of its own. */
export const queueOf = (build: string): string => `assess-${build}`;

/** The same for the same content, so that nothing is asked twice. */
export const jobOf = (sha256: string): string => `paper-${sha256}`;

/** The keys of a queue that BullMQ itself lets lie for ever. */
const lasting = ["meta", "id", "wait", "active", "stalled", "marker", "events"];

/** Puts off the end of a queue's own keys. */
export const keepUp = async ({ redis }: Link, { toKey }: Pick<Queue, "toKey">): Promise<void> =>
  void (await Promise.all(lasting.map((name) => redis.expire(toKey(name), lifetime))));
