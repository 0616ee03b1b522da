import type { AssessForm } from "../../schemas/assess.ts";
import type { Paper } from "./assess-one.ts";

/** Those who assess: threads of this machine, or whoever takes papers from a queue. */
export interface Crew {
  /** Papers that it is asked for at a time, at most. */
  readonly seats: number;
  /** Undefined where the user stopped it. */
  assess(paper: Paper): Promise<AssessForm | undefined>;
  end(): Promise<void>;
}
