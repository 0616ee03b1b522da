import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { Redis } from "ioredis";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { asked } from "../../../../test-kit/asked.ts";
import { hasRedis, startedRedis, type TestRedis } from "../../../../test-kit/redis.ts";
import type { Thread, Threads } from "../../../threads.ts";
import { assessOne, type Paper } from "../assess-one.ts";

const newFolder = (): string => mkdtempSync(join(tmpdir(), "solvewright-"));
const folderOf = (grids: Readonly<Record<string, string>>): string => {
  const folder = newFolder();
  for (const [name, rows] of Object.entries(grids)) {
    const lines = rows.match(/.{4}/g)!.map((row) => `    ${row}\n`);
    const head = "puzzle: 1\ntitle: Small\nsetter: { name: us, permission: own }\ngrids: [{ id: main, size: 4 }]\n";
    writeFileSync(join(folder, `${name}.puzzle.yaml`), `${head}givens:\n  main: |\n${lines.join("")}`);
  }
  return folder;
};
// By hand: 1234 3421 2143 4312; c is a again.
const [a, b, more] = ["12.434..2.....1.", ".2.....1..434.12", "1..............."];
const small = folderOf({ a, b, c: a, more });
writeFileSync(join(small, "faulty.puzzle.yaml"), "puzzle: 1\n");
writeFileSync(join(small, "latin-1.puzzle.yaml"), Buffer.from("puzzle: 1\ntitle: Caf\xe9\n", "latin1"));
const other = folderOf({ a: b, z: more });

const bytesIn = (folder: string) =>
  readdirSync(folder)
    .sort()
    .map((name) => [name, readFileSync(join(folder, name), "utf8")]);

const never = (): boolean => false;
const really = async (paper: unknown) => assessOne(paper as Paper, never);

/** One thread of a build of that name; each name is a queue of its own. */
const threadsOf = (build: string, ask: Thread["ask"] = really): Threads => ({
  count: 1,
  start: () => ({ ask, end: () => {} }),
  build: () => build,
});

describe.skipIf(!hasRedis)("a queue", () => {
  let redis: TestRedis;
  beforeAll(async () => {
    redis = await startedRedis();
  });
  afterAll(() => redis.end());

  const onRedis = async <T>(ask: (link: Redis) => Promise<T>): Promise<T> => {
    const link = new Redis(redis.url);
    const answer = await ask(link);
    link.disconnect();
    return answer;
  };

  /** A worker in this process; gives back how to stop it, which gives what it said. */
  const workerOf = (threads: Threads) => {
    let isStopped = false;
    const work = asked(["assess", "--worker", "--queue", redis.url], () => isStopped, threads);
    return () => {
      isStopped = true;
      return work;
    };
  };
  const askedOf = (build: string, folder: string, to: string, stopped = never) =>
    asked(["assess", folder, "--to", to, "--queue", redis.url], stopped, threadsOf(build));

  test("gives the same bytes as this machine alone, also for two who ask at once", async () => {
    const stop = workerOf(threadsOf("same"));
    const [alone, queued] = [[small, other].map(newFolder), [small, other, small].map(newFolder)];
    const codes = await Promise.all([
      ...[small, other].map((folder, k) => asked(["assess", folder, "--to", alone[k]!])),
      ...[small, other, small].map((folder, k) => askedOf("same", folder, queued[k]!)),
    ]);
    expect(codes.map(({ code }) => code)).toEqual([1, 1, 1, 1, 1]);
    expect(queued.map(bytesIn)).toEqual([alone[0]!, alone[1]!, alone[0]!].map(bytesIn));
    expect(await stop()).toMatchObject({ code: 3, err: expect.stringMatching(/Stopped after \d+ puzzles/) });
  });

  test("a worker that is stopped gives its puzzle back at once", async () => {
    let isStopped = false;
    let isAsked = false;
    const stoppable = async () => {
      isAsked = true;
      while (!isStopped) await pause(20);
      return undefined;
    };
    const to = newFolder();
    const asking = askedOf("back", folderOf({ a }), to);
    const first = workerOf(threadsOf("back", stoppable));
    while (!isAsked) await pause(20);
    isStopped = true;
    expect((await first()).err).toContain("Stopped after 0 puzzles");
    expect(await onRedis((link) => link.llen("solvewright:assess-back:wait"))).toBe(1);
    const second = workerOf(threadsOf("back"));
    expect((await asking).code).toBe(0);
    await second();
  });

  test("what goes wrong with a worker is told as if it had here, and the worker goes on", async () => {
    let asks = 0;
    const failing = async (paper: unknown) => {
      if (asks++ === 0) throw new Error("as asked");
      return really(paper);
    };
    const stop = workerOf(threadsOf("failing", failing));
    expect(await askedOf("failing", folderOf({ a }), newFolder())).toMatchObject({
      code: 70,
      err: expect.stringContaining("as asked"),
    });
    expect((await askedOf("failing", other, newFolder())).code).toBe(1);
    await stop();
  });

  test.concurrent("a long puzzle stays with a worker that lives", async () => {
    const asks: string[] = [];
    const long = async (paper: unknown) => {
      asks.push("long");
      await pause(6500);
      return really(paper);
    };
    const to = newFolder();
    const folder = folderOf({ a });
    const stops = [workerOf(threadsOf("long", long)), workerOf(threadsOf("long", long))];
    expect((await askedOf("long", folder, to)).code).toBe(0);
    expect(asks).toEqual(["long"]);
    await Promise.all(stops.map((stop) => stop()));
  });

  test.concurrent("who asks can be stopped, and then waits for nothing", async () => {
    const said: { out: string[]; err: string[] } = { out: [], err: [] };
    const isNoted = (): boolean => said.err.join("").includes("No worker of this build is at the queue");
    const args = ["assess", small, "--queue", redis.url];
    const { code, err } = await asked(args, isNoted, threadsOf("stopped"), said);
    expect({ code, err }).toEqual({ code: 3, err: expect.stringContaining("Stopped after 1 of 6 puzzles") });
    expect(await onRedis((link) => link.keys("*assess-stopped:paper*"))).toEqual([]);
  });

  test("nothing is left there for ever", async () => {
    const left = await onRedis(async (link) =>
      Promise.all((await link.keys("*")).map(async (key) => ({ key, seconds: await link.ttl(key) }))),
    );
    expect(left.length).toBeGreaterThan(0);
    expect(left.filter(({ seconds }) => seconds === -1 || seconds > 3600)).toEqual([]); // -1: for ever
  });
});

describe("a Redis that can't be used", () => {
  const saying = async (...args: string[]) => {
    const { code, out, err } = await asked(["assess", small, ...args], never, threadsOf("refused"));
    return { code, said: out + err };
  };
  const listening = (server: Server): Promise<string> =>
    new Promise((resolve) =>
      server.listen(0, "127.0.0.1", () => {
        const address = server.address();
        resolve(`127.0.0.1:${typeof address === "object" && address!.port}`);
      }),
    );
  test("nobody listens", async () => {
    const server = createServer();
    const host = await listening(server);
    await new Promise((done) => server.close(done));
    expect(await saying("--queue", `redis://me:secret@${host}`)).toEqual({
      code: 2,
      said: `The queue at redis://${host} can't be used: nothing listens there.\n`,
    });
  });
  test("who listens says nothing", async () => {
    const server = createServer(() => {});
    const host = await listening(server);
    expect(await saying("--queue", `redis://${host}`)).toEqual({
      code: 2,
      said: `The queue at redis://${host} can't be used: it does not answer.\n`,
    });
    server.close();
  });
  test.skipIf(!hasRedis).each([
    ["", "it wants a password"],
    [":wrong-secret@", "it refuses this user and password"],
  ])("the password is %s", async (login, reason) => {
    const redis = await startedRedis("--requirepass", "right-secret");
    const { code, said } = await saying("--queue", redis.url.replace("//", `//${login}`));
    expect({ code, said }).toEqual({ code: 2, said: `The queue at ${redis.url} can't be used: ${reason}.\n` });
    expect((await asked(["assess", "--worker", "--queue", redis.url])).code).toBe(2);
    await redis.end();
  });
  test.each([
    [["--worker"], "--worker takes its puzzles from a queue"],
    [["--worker", "--queue", "redis://h"], "no FOLDER and no --to"],
    [["--cores", "2", "--queue", "redis://h"], "--cores is for each --worker"],
  ])("%j", async (args, said) =>
    expect(await saying(...args)).toEqual({ code: 2, said: expect.stringContaining(said) }),
  );
});
