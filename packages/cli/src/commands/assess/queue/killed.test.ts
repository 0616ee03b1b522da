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
for (const name of ["harbour-lights", "market-stall", "rain-gauge", "silver-weather"])
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
const until = async (isSo: () => Promise<boolean> | boolean): Promise<void> => {
  while (!(await isSo())) await pause(10);
};

/** Long enough for a machine that has much else to do, in milliseconds. */
const patience = 120_000;

/** The built program, since only a process can be killed. */
describe("killed in the middle", () => {
  const dist = join(root, `packages/cli/dist/tested-${process.pid}`);
  const whole = newFolder();
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

  beforeAll(async () => {
    await build(dist);
    expect(await codeOf(start(puzzles, "--to", whole))).toBe(1);
  }, patience);
  afterAll(async () => {
    await Promise.all(started.map(killed));
    rmSync(dist, { recursive: true });
  });

  test("a run goes on where it was", { timeout: patience }, async () => {
    const to = newFolder();
    for (const least of [1, 3]) {
      const run = start(puzzles, "--to", to, "--cores", "1");
      await until(() => notesIn(to) >= least);
      await killed(run);
    }
    expect(readdirSync(to)).toEqual(["assessed.notes"]);
    expect(await codeOf(start(puzzles, "--to", to))).toBe(1);
    expect(bytesIn(to)).toEqual(bytesIn(whole));
  });

  describe.skipIf(!hasRedis)("over a queue", () => {
    let redis: TestRedis;
    let link: Redis;
    beforeAll(async () => {
      redis = await startedRedis();
      link = new Redis(redis.url);
    });
    afterAll(async () => {
      link.disconnect();
      await redis.end();
    });
    const ask = (to: string): ChildProcess => start(puzzles, "--to", to, "--queue", redis.url);
    const work = (): ChildProcess => start("--worker", "--cores", "1", "--queue", redis.url);
    const keyOf = async (name: string): Promise<string> => (await link.keys(`*:${name}`))[0] ?? "";
    /** How many puzzles are with workers, the killed ones' too. */
    const active = async (): Promise<number> => link.llen(await keyOf("active"));
    /** How many were taken from killed workers and given to others. */
    const takenOver = async (): Promise<number> =>
      (await link.xrange(await keyOf("events"), "-", "+")).filter(([, fields]) => fields.includes("stalled")).length;

    /** Kills a worker at a puzzle once so many were taken over and as many noted; one that had just done it does not count. */
    const killedAtWork = async (to: string, after: number): Promise<void> => {
      do {
        const worker = work();
        await until(async () => notesIn(to) >= after && (await takenOver()) >= after && (await active()) > 0);
        await killed(worker);
      } while ((await active()) === 0);
    };

    test("neither workers nor who asks lose anything", { timeout: patience }, async () => {
      const to = newFolder();
      const first = ask(to);
      await killedAtWork(to, 0);
      await killedAtWork(to, 1);
      await killed(first);
      expect(readdirSync(to)).toEqual(["assessed.notes"]);
      const last = work();
      expect(await codeOf(ask(to))).toBe(1);
      expect(await takenOver()).toBeGreaterThanOrEqual(2);
      expect(bytesIn(to)).toEqual(bytesIn(whole));
      last.kill("SIGINT");
      expect(await codeOf(last)).toBe(3);
    });
  });
});
