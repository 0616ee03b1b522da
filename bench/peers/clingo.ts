import { ask, together } from "../../packages/engine/test-kit/clingo.ts";
import { timedOnce } from "../turns.ts";
import type { Peer, Seen } from "./peer.ts";

/** The answer-set solver clingo as WebAssembly in this process, asked for two models; its text is written beforehand. */
export const clingo: Peer = {
  name: "clingo",
  ready: ({ puzzle }) => {
    const program = together([puzzle]);
    return {
      seen: async () => (await ask(program, 2)).Models.Number as Seen,
      pass: () => timedOnce(() => ask(program, 2)),
    };
  },
};
