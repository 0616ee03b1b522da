// fast pack: caches plan; writes chosen files
import { readFileSync, writeFileSync, mkdirSync, existsSync } from "node:fs";
const root = "/tmp/h/sheets";
const e = await import(`${root}/packages/engine/src/index.ts`);
const { packFiles } = await import(`${root}/packages/press/src/files/registry.ts`);
const { besleyCss } = await import(`${root}/packages/press/src/files/index.ts`);
const [only, ...files] = process.argv.slice(2);
for (const f of files) {
  const board = e.compile(e.accept(e.read(readFileSync(f, "utf8"))));
  const name = f.split("/").at(-1)!.replace(/\..*/, "");
  const cache = `/tmp/h/cache-${name}.json`;
  if (!existsSync(cache)) {
    const about = e.definitionOf(board);
    const { plan } = e.finished(e.runningOrder(board, (c: any) => e.prove(c, about), {}));
    const j = e.finished(e.judging(board)) as any;
    writeFileSync(cache, JSON.stringify({ plan, solution: e.namedDigits(board, j.solutions[0]) }));
  }
  const { plan, solution } = JSON.parse(readFileSync(cache, "utf8"));
  mkdirSync(`/tmp/h/out/${name}`, { recursive: true });
  const page = readFileSync(`${root}/packages/page/dist/page.html`, "utf8");
  for (const d of packFiles) if (new RegExp(only!).test(d.name)) { const t = performance.now(); writeFileSync(`/tmp/h/out/${name}/${d.name}`, d.make({ board, plan, solution }, { page, fontCss: besleyCss() })); console.log(name, d.name, Math.round(performance.now() - t)); }
}
