/** Makes an answer of a message, both plain data; ends early with what it has once the user asks to stop. */
type Job = (message: never, stopped: () => boolean) => unknown;

/** What other threads can be asked to do. */
export const jobs = {
  assess: async (): Promise<Job> => (await import("./commands/assess/assess-one.ts")).assessOne,
  "judge-lines": async (): Promise<Job> => (await import("./commands/check/judge-lines.ts")).judgeLines,
};

export type JobName = keyof typeof jobs;
