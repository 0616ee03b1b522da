import type { AssessForm } from "../../schemas/assess.ts";
import type { Paper } from "./assess-one.ts";
import type { Crew } from "./crew.ts";

/** Has papers assessed, as many at a time as the crew has seats; `tell` hears of each as it is done. */
export const assessAll = async (
  files: readonly string[],
  crew: Crew,
  stopped: () => boolean,
  paperOf: (file: string) => Promise<Paper | undefined>,
  tell: (form: AssessForm) => Promise<void>,
): Promise<void> => {
  let next = 0;
  const lane = async (): Promise<void> => {
    while (next < files.length && !stopped()) {
      const paper = await paperOf(files[next++]!);
      const form = paper && (await crew.assess(paper));
      if (form) await tell(form);
    }
  };
  try {
    await Promise.all(Array.from({ length: Math.min(crew.seats, files.length) }, lane));
  } finally {
    await crew.end();
  }
};
