import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { threadsOf } from "./threads.ts";

/** A program that answers with its job and the message, and fails when asked to. */
const source = `
  const { parentPort, workerData } = require("node:worker_threads");
  parentPort.on("message", (message) => {
    if (message === "fail") throw new Error("as asked");
    parentPort.postMessage([workerData.job, message]);
  });
`;
const program = join(mkdtempSync(join(tmpdir(), "solvewright-")), "program.cjs");
writeFileSync(program, source);
const threads = threadsOf({ program, stop: new SharedArrayBuffer(1) }, program);

test("another build is told from this one", () => {
  const other = join(dirname(program), "other.cjs");
  writeFileSync(other, `${source}// built anew`);
  const again = threadsOf({ program, stop: new SharedArrayBuffer(1) }, program);
  expect(again.build()).toBe(threads.build());
  expect(threadsOf({ program, stop: new SharedArrayBuffer(1) }, other).build()).not.toBe(threads.build());
});

test("there is one at least", () => expect(threads.count).toBeGreaterThan(0));

test("a thread answers one message after the other", async () => {
  const thread = threads.start("judge-lines");
  expect(await thread.ask(1)).toEqual(["judge-lines", 1]);
  expect(await thread.ask(["a"])).toEqual(["judge-lines", ["a"]]);
  thread.end();
});

test("what goes wrong there is told here", async () => {
  const thread = threads.start("judge-lines");
  await expect(thread.ask("fail")).rejects.toThrow("as asked");
  thread.end();
});
