import { setTimeout as pause } from "node:timers/promises";
import { decode } from "@solvewright/engine";
import { Queue } from "bullmq";
import type { Asked, Output } from "../../../command.ts";
import type { AssessForm } from "../../../schemas/assess.ts";
import { assessOne, type Paper } from "../assess-one.ts";
import type { Crew } from "../crew.ts";
import type { Address } from "./address.ts";
import { type Errand, jobOf, keepUp, lifetime, prefix, queueOf } from "./agreed.ts";
import { type Answers, answersOn } from "./answers.ts";
import { type Link, linkTo, overLink } from "./link.ts";

/** Enough for the cores of many workers, and not much that is left over should this process be killed. */
const seats = 256;

/** How often a paper that is not answered is asked anew, should the Redis have lost it, in milliseconds. */
const patience = 5000;

/** Looks soon at first and seldom later, in milliseconds. */
const nextLook = (waited: number): number => Math.min(20 + waited / 4, 500);

interface Desk {
  readonly link: Link;
  readonly queue: Queue<Errand>;
  readonly answers: Answers;
  stopped(): boolean;
}

const deskAt = async (address: Address, build: string, { stopped }: Asked): Promise<Desk> => {
  const link = await linkTo(address);
  const queue = new Queue<Errand>(queueOf(build), {
    connection: link.redis,
    prefix,
    streams: { events: { maxLen: seats } },
    defaultJobOptions: { removeOnComplete: true, removeOnFail: true },
  });
  queue.on("error", () => {}); // whoever asked for something is told
  return { link, queue, answers: answersOn(link, build), stopped };
};

/** Does nothing where the same is waiting already, or being worked at. */
const put = ({ link, queue }: Desk, file: string, errand: Errand): Promise<void> =>
  overLink(link, async () => {
    const jobId = jobOf(errand.sha256);
    await queue.add(file, errand, { jobId });
    await link.redis.expire(queue.toKey(jobId), lifetime);
    await keepUp(link, queue);
  });

const answerTo = async (desk: Desk, file: string, errand: Errand): Promise<AssessForm | undefined> => {
  const { link, queue, answers, stopped } = desk;
  const start = performance.now();
  let asked = Number.NEGATIVE_INFINITY;
  while (!stopped()) {
    const form = await answers.read(errand.sha256);
    if (form) return form;
    const now = performance.now();
    if (now - asked > patience) {
      await put(desk, file, errand);
      asked = now;
    }
    await pause(nextLook(now - start));
  }
  await overLink(link, () => queue.remove(jobOf(errand.sha256)));
  return undefined;
};

/** Whether anybody takes papers: one that a killed worker had still counts as being worked at. */
const isDeserted = async (queue: Queue): Promise<boolean> =>
  (await queue.getActiveCount()) === 0 || (await queue.getWorkersCount()) === 0;

/** Says so where no worker is to be seen and nothing is answered; gives back how to end that. */
const watched = ({ link, queue }: Desk, out: Output, answered: () => number): (() => void) => {
  let before = 0;
  let wasDeserted = false;
  const look = async (): Promise<void> => {
    const isDesertedNow = answered() === before && (await isDeserted(queue));
    const how = `solvewright assess --worker --queue ${link.shown}`;
    if (isDesertedNow && !wasDeserted) out.note(`No worker of this build is at the queue. Start one: ${how}`);
    wasDeserted = isDesertedNow;
    before = answered();
  };
  const timer = setInterval(() => void look().catch(() => {}), patience);
  return () => clearInterval(timer);
};

/** Whoever takes papers from the queue at this address. */
export const queueCrew = async (address: Address, build: string, asked: Asked): Promise<Crew> => {
  const desk = await deskAt(address, build, asked);
  let answered = 0;
  const unwatch = watched(desk, asked.out, () => answered);
  return {
    seats,
    assess: async (paper: Paper) => {
      const text = decode(paper.bytes);
      if (typeof text !== "string") return assessOne(paper, asked.stopped); // too much to send, or no text
      const form = await answerTo(desk, paper.file, { sha256: paper.sha256, text });
      answered++;
      return form && { ...form, file: paper.file };
    },
    end: async () => {
      unwatch();
      desk.link.redis.disconnect();
    },
  };
};
