import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { noRedis, redisHere } from "../../../scripts/redis.mjs";

const program = redisHere();

/** False where no test of a queue can run, which is said. */
export const hasRedis = program !== undefined;
if (!hasRedis) console.log(noRedis);

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const server = createServer();
    server.on("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => resolve(typeof address === "object" ? address!.port : 0));
    });
  });

/** A Redis of a test's own, which keeps nothing on disk. */
export interface TestRedis {
  readonly url: string;
  end(): Promise<void>;
}

export const startedRedis = async (...settings: string[]): Promise<TestRedis> => {
  const [port, folder] = [await freePort(), mkdtempSync(join(tmpdir(), "solvewright-redis-"))];
  const kept = ["--save", "", "--appendonly", "no", "--dir", folder];
  const server = spawn(program!, ["--port", `${port}`, "--bind", "127.0.0.1", ...kept, ...settings]);
  await new Promise<void>((resolve, reject) => {
    let said = "";
    server.on("exit", () => reject(new Error(`redis-server ended: ${said}`)));
    server.stdout.on("data", (text) => {
      said += text;
      if (/Ready to accept connections/.test(said)) resolve();
    });
  });
  return {
    url: `redis://127.0.0.1:${port}`,
    end: () =>
      new Promise((resolve) => {
        server.removeAllListeners("exit").on("exit", () => {
          rmSync(folder, { recursive: true, force: true });
          resolve();
        });
        server.kill("SIGKILL");
      }),
  };
};
