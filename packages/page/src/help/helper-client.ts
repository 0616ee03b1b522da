import type { App } from "../app/app.ts";
import { answered } from "../app/help-actions.ts";
import { lacking, type State, saying } from "../app/state.ts";
import { unpacked } from "../unpacked.ts";
import type { Answered, Ask, Posted } from "./asks.ts";

type Send = (ask: Ask) => number;
interface Line {
  readonly send: Send;
  close(): void;
}

/** One worker and what it answers. */
const lineTo = (program: string, heard: (answer: Answered) => void): Line => {
  const worker = new Worker(program);
  let id = 0;
  worker.onmessage = ({ data }: MessageEvent<Answered>) => heard(data);
  return {
    send: (ask) => {
      worker.postMessage({ id: ++id, ...ask } satisfies Posted);
      return id;
    },
    close: () => worker.terminate(),
  };
};

const failed = (state: State): State =>
  saying({ ...lacking(state, "asking"), remark: "Help has no answer to that." }, "Help has no answer to that.");

/** Some puzzles take far longer; nobody's battery is spent on these. */
const longestOrder = 120_000;

/** Works out the show's running order in a worker of its own, and ends it. */
const withOrder = (program: string, start: Ask, heard: (answer: Answered) => void): void => {
  const line = lineTo(program, (answer) => {
    if ("failed" in answer) return line.close();
    if (answer.reply !== "order") return;
    heard(answer);
    line.close();
  });
  line.send(start);
  line.send({ ask: "order" });
  setTimeout(line.close, longestOrder);
};

/** What warms the helper up may hold a question up that long, in milliseconds. */
const longestWarmUp = 4000;

/** Asks the helper whatever the state says is to be asked, and puts the answers into the state. */
export const helperFor = async (app: App, packed: string): Promise<void> => {
  const start: Ask = { ask: "start", puzzle: app.ground.data.puzzle };
  const program = URL.createObjectURL(new Blob([await unpacked(packed)], { type: "text/javascript" }));
  let waiting: { readonly id: number; readonly ask: Ask } | undefined;
  let warming: number | undefined;

  const heard = (answer: Answered): void => {
    if (warming === answer.id) warmed();
    const isAwaited = waiting?.id === answer.id;
    if (isAwaited) waiting = undefined;
    if ("failed" in answer) {
      if (isAwaited) app.update(failed);
      return;
    }
    if (answer.reply === "start" || isAwaited) app.update((state, moment) => answered(state, answer, moment));
  };
  const begun = (): Line => {
    const fresh = lineTo(program, heard);
    fresh.send(start);
    return fresh;
  };
  let line = begun();
  warming = line.send({ ask: "warm" });

  // What is no longer wanted is stopped: a worker has no other way.
  const beginAgain = (): void => {
    line.close();
    if (warming !== undefined) warmed();
    line = begun();
    learn();
  };
  const ask = (asking: Ask | undefined): void => {
    if (waiting) beginAgain();
    waiting = asking && { id: line.send(asking), ask: asking };
    if (warming !== undefined) setTimeout(warmedEnough, longestWarmUp);
  };
  const warmedEnough = (): void => {
    if (warming === undefined || !waiting) return;
    beginAgain();
    waiting = { ...waiting, id: line.send(waiting.ask) };
  };
  const learn = (): void => {
    const { plan } = app.state();
    if (plan) line.send({ ask: "learn", plan });
  };
  app.watch(({ asking }, before) => {
    if (asking !== before.asking && asking !== waiting?.ask && (asking || waiting)) ask(asking);
  });
  /** The running order comes last: on a small device the two would be in each other's way. */
  const warmed = (): void => {
    warming = undefined;
    withOrder(program, start, (answer) => {
      app.update((state, moment) => ("failed" in answer ? state : answered(state, answer, moment)));
      learn();
    });
  };
};
