import { setTimeout as pause } from "node:timers/promises";
import { Redis } from "ioredis";
import { type BadInput, badUsage } from "../../../faults.ts";
import { printable } from "../../../printable.ts";
import type { Address } from "./address.ts";

/** A Redis that was reached. */
export interface Link {
  readonly redis: Redis;
  /** Where it is, for people to see. */
  readonly shown: string;
}

/** How long a Redis may take to answer, in milliseconds: when it is first met, and while it may be starting anew. */
const patience = { first: 5000, later: 30_000 };

const right = "a Redis that can be reached and written to";

const reasons: readonly (readonly [RegExp, string])[] = [
  [/ECONNREFUSED/, "nothing listens there"],
  [/ENOTFOUND|EAI_AGAIN/, "there is no such host"],
  [/ETIMEDOUT|timed out/, "it does not answer"],
  [/NOAUTH/, "it wants a password"],
  [/WRONGPASS|invalid password/, "it refuses this user and password"],
  [/RESP type|Protocol error/, "what answers there is no Redis"],
];

/** What goes wrong between us and a Redis, and not in our own work. */
export const isOfLink = ({ name, code }: NodeJS.ErrnoException): boolean =>
  name === "ReplyError" || typeof code === "string";

export const refusal = ({ shown }: Pick<Link, "shown">, { code = "", message }: NodeJS.ErrnoException): BadInput => {
  const reason = reasons.find(([known]) => known.test(`${code} ${message}`))?.[1] ?? message;
  return badUsage(printable(`The queue at ${shown} can't be used: ${reason}.`), { read: shown, right });
};

/** Asks something of a Redis; what it refuses, or that it is gone, is said of its address. */
export const overLink = async <T>(link: Pick<Link, "shown">, ask: () => Promise<T>): Promise<T> => {
  try {
    return await ask();
  } catch (error) {
    throw refusal(link, error as Error);
  }
};

/** Ready, or the first thing that went wrong. */
const ready = (redis: Redis): Promise<void> =>
  Promise.race([
    redis.connect(),
    new Promise<never>((_, reject) => void redis.once("error", reject)),
    pause(patience.first, undefined, { ref: false }).then(() => {
      throw new Error("timed out");
    }),
  ]);

/** Throws where there is none, or where it does not let us in. Once reached, it may be away for half a minute. */
export const linkTo = async ({ shown, options }: Address): Promise<Link> => {
  const redis = new Redis({
    ...options,
    lazyConnect: true,
    connectTimeout: patience.first,
    commandTimeout: patience.later,
    blockingTimeout: patience.later,
    maxRetriesPerRequest: null, // as BullMQ wants it
    retryStrategy: () => 500,
  });
  redis.on("error", () => {}); // else it prints them
  try {
    await overLink({ shown }, () => ready(redis));
  } catch (error) {
    redis.disconnect();
    throw error;
  }
  return { redis, shown };
};
