import type { AssessForm } from "../../../schemas/assess.ts";
import { formIn } from "../form-in.ts";
import { lifetime, prefix, queueOf } from "./agreed.ts";
import { type Link, overLink } from "./link.ts";

/** Where workers leave their answers. They hang on a puzzle's content alone, so whoever asks may read them. */
export interface Answers {
  /** Undefined while there is none; throws where a worker met a fault of ours. */
  read(sha256: string): Promise<AssessForm | undefined>;
  write(sha256: string, form: AssessForm): Promise<void>;
  excuse(sha256: string, error: unknown): Promise<void>;
}

/** A fault is told to those who wait for the answer; who asks later has another try. In seconds. */
const faultLifetime = 60;

const faultIn = (text: string): string | undefined => /^fault: (.*)/s.exec(text)?.[1];

export const answersOn = (link: Link, build: string): Answers => {
  const keyOf = (sha256: string): string => `${prefix}:${queueOf(build)}-answer:${sha256}`;
  const put = async (sha256: string, text: string, seconds: number): Promise<void> =>
    void (await overLink(link, () => link.redis.set(keyOf(sha256), text, "EX", seconds)));
  return {
    read: async (sha256) => {
      const text = (await overLink(link, () => link.redis.get(keyOf(sha256)))) ?? "";
      const fault = faultIn(text);
      if (fault !== undefined) throw new Error(`A worker met this: ${fault}`);
      const form = formIn(text);
      return form?.sha256 === sha256 ? form : undefined;
    },
    write: (sha256, form) => put(sha256, JSON.stringify(form), lifetime),
    excuse: (sha256, error) => put(sha256, `fault: ${(error as Error).stack ?? error}`, faultLifetime),
  };
};
