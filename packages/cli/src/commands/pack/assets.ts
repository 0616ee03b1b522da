import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Assets } from "@solvewright/press";
import { besleyCss } from "@solvewright/press/files";

const find = createRequire(import.meta.url);

/** The try-it page as scripts/page.mjs has built it. */
const builtPage = (): string => readFileSync(find.resolve("@solvewright/page/built"), "utf8");

export const assets = (): Assets => ({ fontCss: besleyCss(), page: builtPage() });
