import type { Command } from "./command.ts";
import { answer } from "./commands/answer/answer.ts";
import { assess } from "./commands/assess/assess.ts";
import { booklet } from "./commands/booklet/booklet.ts";
import { check } from "./commands/check/check.ts";
import { correct } from "./commands/correct/correct.ts";
import { pack } from "./commands/pack/pack.ts";
import { plan } from "./commands/plan/plan.ts";
import { reach } from "./commands/reach/reach.ts";
import { teach } from "./commands/teach/teach.ts";
import { why } from "./commands/why/why.ts";

export const commands: readonly Command[] = [check, plan, why, answer, reach, pack, correct, booklet, teach, assess];
