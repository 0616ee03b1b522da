import type { Asked } from "../../command.ts";
import type { AssessForm } from "../../schemas/assess.ts";
import type { Thread, Threads } from "../../threads.ts";
import { assessOne } from "./assess-one.ts";
import type { Crew } from "./crew.ts";

/** Where there are no other threads, this one does it. */
const alone = ({ stopped }: Asked): Crew => ({
  seats: 1,
  assess: async (paper) => assessOne(paper, stopped),
  end: async () => {},
});

const crewOf = (threads: Threads, seats: number): Crew => {
  const started: Thread[] = [];
  const idle: Thread[] = [];
  const start = (): Thread => {
    const thread = threads.start("assess");
    started.push(thread);
    return thread;
  };
  return {
    seats,
    assess: async (paper) => {
      const thread = idle.pop() ?? start();
      const form = await thread.ask(paper);
      idle.push(thread); // one that failed is not asked again
      return form as AssessForm | undefined;
    },
    end: async () => {
      for (const thread of started) thread.end();
    },
  };
};

/** This machine, as many papers at a time as `cores` says. */
export const threadCrew = (asked: Asked, cores: number): Crew =>
  asked.threads ? crewOf(asked.threads, cores) : alone(asked);
