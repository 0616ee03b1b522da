import { setTimeout as pause } from "node:timers/promises";
import { type Job, WaitingError, Worker } from "bullmq";
import type { Asked, ExitCode, Output } from "../../../command.ts";
import type { Crew } from "../crew.ts";
import type { Address } from "./address.ts";
import { type Errand, keepUp, prefix, queueOf } from "./agreed.ts";
import { type Answers, answersOn } from "./answers.ts";
import { isOfLink, type Link, linkTo, overLink, refusal } from "./link.ts";

/**
 * How long a paper stays with a worker that gives no sign of life, how often it gives one, and how often that is looked
 * for, in milliseconds. The work is done in other threads, so that nothing holds a sign up. A paper is never given up
 * because workers were killed at it.
 */
const holds = {
  lockDuration: 4000,
  lockRenewTime: 1000,
  stalledInterval: 1000,
  maxStalledCount: Number.MAX_SAFE_INTEGER,
};

/** How often the end and the Redis are looked for, in milliseconds. */
const look = 200;

const isErrand = (data: Partial<Errand> | undefined): data is Errand =>
  typeof data?.sha256 === "string" && typeof data.text === "string";

const givenBack = async (job: Job, token: string | undefined, close: () => void): Promise<never> => {
  close();
  await job.moveToWait(token);
  throw new WaitingError();
};

/** Leaves the answer to a job; one that the user stopped goes back to the others, and no more are taken. */
const answering =
  (crew: Crew, answers: Answers, close: () => void) =>
  async (job: Job<Errand>, token?: string): Promise<void> => {
    if (!isErrand(job.data)) return; // what outlived its text
    const { sha256, text } = job.data;
    const paper = { file: job.name, sha256, bytes: new TextEncoder().encode(text) };
    const leave = await crew.assess(paper).then(
      (form) => () => (form ? answers.write(sha256, form) : givenBack(job, token, close)),
      (error) => () => answers.excuse(sha256, error),
    );
    await leave();
  };

/** Tells each trouble with the Redis once; that a paper went to another worker is none. */
const telling = (link: Link, out: Output) => {
  const told = new Set<string>();
  return (error: Error): void => {
    const { message } = refusal(link, error);
    if (isOfLink(error) && !told.has(message)) out.note(message);
    told.add(message);
  };
};

const workerAt = (link: Link, build: string, crew: Crew, { out }: Asked): Worker<Errand> => {
  const close = (): void => void worker.close();
  const worker = new Worker<Errand>(queueOf(build), answering(crew, answersOn(link, build), close), {
    connection: link.redis,
    prefix,
    concurrency: crew.seats,
    ...holds,
  });
  const keep = (): void => void keepUp(link, worker).catch(() => {});
  return worker.on("error", telling(link, out)).on("active", keep).on("completed", keep);
};

/** Until the user stops it, or the Redis is gone. */
const waited = async (link: Link, stopped: () => boolean): Promise<void> => {
  while (!stopped()) {
    await overLink(link, () => link.redis.ping());
    await pause(look);
  }
};

/** Takes papers from the queue at this address until the user stops it. */
export const serve = async (address: Address, build: string, crew: Crew, asked: Asked): Promise<ExitCode> => {
  const { out, stopped } = asked;
  const link = await linkTo(address);
  const worker = workerAt(link, build, crew, asked);
  let done = 0;
  worker.on("completed", () => out.progress("Assessing puzzles", `${++done} done`));
  out.note(`Taking puzzles from ${link.shown}, ${crew.seats} at a time, until Ctrl-C.`);
  try {
    await waited(link, stopped);
    await worker.close();
  } finally {
    await worker.close(true); // where it could not be closed in peace
    await crew.end();
    link.redis.disconnect();
  }
  out.note(`Stopped after ${done} ${done === 1 ? "puzzle" : "puzzles"}.`);
  return 3;
};
