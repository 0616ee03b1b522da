/** Builds the try-it page into one HTML file, into which `pageOf` of press puts a puzzle. */
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { fromSource } from "./from-source.mjs";
import { ensureInstalled, root } from "./install.mjs";

const source = join(root, "packages/page/src");
const folder = join(root, "packages/page/dist");
export const pageFile = join(folder, "page.html");

/** The page with a puzzle in it must stay below that. */
const mostBytes = 370_000;

const options = {
  absWorkingDir: root,
  bundle: true,
  write: false,
  target: "es2022",
  conditions: ["source"],
  minify: true,
  legalComments: "none",
  logLevel: "error",
};

const bundled = async (entry, format) => {
  const { build } = await import("esbuild");
  const { outputFiles } = await build({ ...options, entryPoints: [entry], format });
  return outputFiles[0].text.trim();
};

/** The look's tokens as CSS. */
const tokens = async () => {
  const { cssVariables, themes } = await fromSource("packages/press/src/tokens.ts");
  const light = Object.entries(themes.light).map(([name, value]) => `--${name}:${value};`);
  return `${cssVariables()}\n@media print{:root[data-theme]{color-scheme:light;${light.join("")}--page:#fff}}`;
};

const require = createRequire(join(root, "packages/page/package.json"));
const face = (name, family, weights) => {
  const file = readFileSync(require.resolve(`@fontsource-variable/${name}/files/${name}-latin-wght-normal.woff2`));
  const url = `data:font/woff2;base64,${file.toString("base64")}`;
  return `@font-face{font-family:"${family}";font-weight:${weights};font-display:swap;src:url(${url}) format("woff2")}`;
};
const fonts = () =>
  face("besley", "Besley Variable", "400 900") + face("commissioner", "Commissioner Variable", "100 900");

const sheets = ["base", "board", "side", "strip", "layout", "print"];
const style = async () => {
  const { transform } = await import("esbuild");
  const text = sheets.map((name) => readFileSync(join(source, `style/${name}.css`), "utf8")).join("\n");
  const { code } = await transform(`${await tokens()}\n${text}`, { loader: "css", minify: true });
  return fonts() + code.trim();
};

const hashOf = (text) => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

/** Nothing is loaded from anywhere; the one script and the one style are known by their hashes. */
const policyFor = (script, css) =>
  [
    "default-src 'none'",
    `script-src ${hashOf(script)}`,
    `style-src ${hashOf(css)}`,
    "font-src data:",
    "worker-src blob:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");

export const buildPage = async () => {
  const [script, worker, css] = await Promise.all([
    bundled("packages/page/src/main.ts", "iife"),
    bundled("packages/page/src/help/worker.ts", "iife"),
    style(),
  ]);
  const { toBase85 } = await fromSource("packages/press/src/page/base85.ts");
  // As press packs the puzzle, but by zlib, which packs closer and is there only in Node.
  const helper = toBase85(gzipSync(worker, { level: 9 }));
  const parts = { policy: policyFor(script, css), style: css, helper, script };
  const template = readFileSync(join(source, "page.html"), "utf8");
  const page = template.replace(/(\/\*)?__(policy|style|helper|script)__(\*\/)?/g, (_, __, part) => parts[part]);
  if (page.length > mostBytes) throw new Error(`the try-it page has ${page.length} bytes, more than ${mostBytes}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${pageFile}.part`, page);
  renameSync(`${pageFile}.part`, pageFile);
  return { bytes: page.length, script: script.length, worker: worker.length, packed: helper.length, css: css.length };
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureInstalled();
  console.log(await buildPage());
}
