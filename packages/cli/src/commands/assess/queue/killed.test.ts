import { type ChildProcess, spawn } from "node:child_process";
import { copyFileSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { Redis } from "ioredis";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { build } from "../../../../../../scripts/build.mjs";
import { hasRedis, startedRedis, type TestRedis } from "../../../../test-kit/redis.ts";

const root = fileURLToPath(new URL("../../../../../../", import.meta.url));
const newFolder = (): string => mkdtempSync(join(tmpdir(), "solvewright-"));

const puzzles = newFolder();
for (const name of ["harbour-lights", "market-stall", "pebble-atlas", "rain-gauge", "silver-weather"])
  copyFileSync(join(root, `examples/${name}.puzzle.yaml`), join(puzzles, `${name}.puzzle.yaml`));
copyFileSync(join(puzzles, "rain-gauge.puzzle.yaml"), join(puzzles, "again.puzzle.yaml"));
writeFileSync(join(puzzles, "faulty.puzzle.yaml"), "puzzle: 1\n");

const bytesIn = (folder: string) =>
  readdirSync(folder)
    .sort()
    .map((name) => [name, readFileSync(join(folder, name), "utf8")]);
const notesIn = (folder: string): number => {
  const path = join(folder, "assessed.notes");
  return existsSync(path) ? readFileSync(path, "utf8").split("\n").length - 1 : 0;
};

/** The built program, as on another machine. */
describe.skipIf(!hasRedis)("killed in the middle", () => {
  const dist = join(root, `packages/cli/dist/tested-${process.pid}`);
  const alone = newFolder();
  let redis: TestRedis;
  let link: Redis;
  const started: ChildProcess[] = [];

  const start = (...args: string[]): ChildProcess => {
    const child = spawn(process.execPath, [join(dist, "solvewright.js"), "assess", ...args], { stdio: "ignore" });
    started.push(child);
    return child;
  };
  const codeOf = (child: ChildProcess): Promise<number | null> =>
    new Promise((resolve) => {
      if (child.exitCode !== null || child.signalCode !== null) resolve(child.exitCode);
      else child.on("exit", resolve);
    });
  const killed = (child: ChildProcess): Promise<number | null> => {
    child.kill("SIGKILL");
    return codeOf(child);
  };
  const ask = (to: string): ChildProcess => start(puzzles, "--to", to, "--queue", redis.url);
  const work = (): ChildProcess => start("--worker", "--cores", "1", "--queue", redis.url);

  const until = async (isSo: () => Promise<boolean> | boolean): Promise<void> => {
    while (!(await isSo())) await pause(10);
  };
  /** How many puzzles are with workers, the killed ones' too. */
  const active = async (): Promise<number> => {
    const [key] = await link.keys("*:active");
    return key === undefined ? 0 : link.llen(key);
  };

  beforeAll(async () => {
    [redis] = await Promise.all([startedRedis(), build(dist)]);
    link = new Redis(redis.url);
    expect(await codeOf(start(puzzles, "--to", alone))).toBe(1);
  }, 120_000);
  afterAll(async () => {
    for (const child of started) child.kill("SIGKILL");
    link.disconnect();
    await redis.end();
    rmSync(dist, { recursive: true });
  });

  test("workers and who asks lose nothing: the bytes are those of one machine alone", async () => {
    const to = newFolder();
    const first = ask(to);
    const workers = [work()];
    for (const least of [1, 2]) {
      await until(async () => notesIn(to) >= least && (await active()) > 0);
      await killed(workers.at(-1)!);
      expect(await active()).toBe(1);
      workers.push(work());
    }
    await until(() => notesIn(to) >= 3);
    await killed(first);
    expect(existsSync(join(to, "assessed.jsonl"))).toBe(false);
    expect(await codeOf(ask(to))).toBe(1);
    expect(bytesIn(to)).toEqual(bytesIn(alone));
    workers.at(-1)!.kill("SIGINT");
    expect(await codeOf(workers.at(-1)!)).toBe(3);
  }, 120_000);
});
