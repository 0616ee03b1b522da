import type { Asked } from "../../command.ts";
import type { AssessForm } from "../../schemas/assess.ts";
import type { Thread } from "../../threads.ts";
import { assessOne, type Paper } from "./assess-one.ts";

/** Where there are no other threads, this one does it. */
const here = ({ stopped }: Asked): Thread => ({
  ask: async (paper) => assessOne(paper as Paper, stopped),
  end: () => {},
});

/** Has papers assessed, one a thread at a time; `tell` hears of each as it is done. */
export const assessAll = async (
  files: readonly string[],
  cores: number,
  asked: Asked,
  paperOf: (file: string) => Promise<Paper | undefined>,
  tell: (form: AssessForm) => Promise<void>,
): Promise<void> => {
  let next = 0;
  const lane = async (thread: Thread): Promise<void> => {
    while (next < files.length && !asked.stopped()) {
      const paper = await paperOf(files[next++]!);
      const form = paper && ((await thread.ask(paper)) as AssessForm | undefined);
      if (form) await tell(form);
    }
  };
  const { threads } = asked;
  const count = Math.min(threads ? cores : 1, files.length);
  const started = Array.from({ length: count }, () => (threads ? threads.start("assess") : here(asked)));
  try {
    await Promise.all(started.map(lane));
  } finally {
    for (const thread of started) thread.end();
  }
};
