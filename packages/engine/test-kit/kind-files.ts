import { readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { KindCases, Oracle } from "./kind-cases.ts";

const folder = join(dirname(fileURLToPath(import.meta.url)), "../src/rules/kinds");

/** What the files `KIND<ending>` of the kinds export under a name, by kind; a kind may be a folder of its own. */
const exported = async <T>(ending: string, name: string): Promise<ReadonlyMap<string, T>> => {
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(ending));
  const entries = files.map(async (file): Promise<[string, T]> => {
    const module = (await import(/* @vite-ignore */ pathToFileURL(join(folder, file)).href)) as Record<string, T>;
    const kind = file.split("/").at(-1)!.slice(0, -ending.length);
    if (!module[name]) throw new Error(`${file} doesn't export ${name}`);
    return [kind, module[name]];
  });
  return new Map(await Promise.all(entries));
};

export const oracles = await exported<Oracle>(".oracle.ts", "oracle");
export const cases = await exported<KindCases>(".cases.ts", "cases");
