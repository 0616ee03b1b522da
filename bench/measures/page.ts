import { spawnSync } from "node:child_process";
import { join } from "node:path";
import process from "node:process";
import type { Options } from "../options.ts";
import { root } from "../root.ts";
import { isWanted, type Measure, type Row } from "./measure.ts";

const puzzles = ["paper-mill", "copper-kettle", "ribbon-garden", "sorrel-puddle"];
const files = puzzles.map((name) => join(root, `examples/${name}.puzzle.yaml`));
const program = join(root, "packages/page/browser/answer-times.ts");

async function* rows(options: Options): AsyncGenerator<Row> {
  if (!isWanted("page", options)) return;
  const args = ["--import", "tsx", "--conditions=source", program, ...files];
  const { stdout } = spawnSync(process.execPath, args, {
    cwd: root,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  });
  for (const line of stdout.split("\n").filter(Boolean)) yield { measure: "page", ...JSON.parse(line) };
}

export const page: Measure = {
  name: "page",
  about:
    "The try-it page of our own puzzles, from the key to the answer, at six stops on the way through each, in a Chromium that slows the page 4 times and leaves its worker as it is. The last column is the slowest answer of a page that is not slowed, counted 4 times, worker and all. No rows where there is no Chromium.",
  rows,
};
