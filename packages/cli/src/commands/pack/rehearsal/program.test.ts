import { expect, test } from "vitest";
import { runProgram } from "./program.ts";

const node = process.execPath;
const goOn = { stopped: () => false };

test("a program's exit code comes back", async () => {
  expect(await runProgram(node, ["-e", "process.exit(0)"], goOn)).toBe(0);
  expect(await runProgram(node, ["-e", "process.exit(7)"], goOn)).toBe(7);
});
test("it is given what it shall read", async () => {
  const length = "let n = 0; process.stdin.on('data', (d) => (n += d.length)).on('end', () => process.exit(n))";
  expect(await runProgram(node, ["-e", length], { ...goOn, input: "hello" })).toBe(5);
});
test("one that is not there is missing", async () =>
  expect(await runProgram("solvewright-has-no-such-program", [], goOn)).toBe("missing"));
test("one that runs on is ended once the user asks to stop", async () =>
  expect(await runProgram(node, ["-e", "setTimeout(() => {}, 60000)"], { stopped: () => true })).toBe("stopped"));
