/** Holds the imports to .dependency-cruiser.mjs, and asserts that there was something to hold. */
import { join } from "node:path";
import process from "node:process";
import { ensureInstalled, root } from "./install.mjs";

// A cruise that sees nothing passes every wall (a new TypeScript once had that effect). Raise it as the project grows.
const leastModules = 20;

const cruiseWorkspaces = async () => {
  const { cruise } = await import("dependency-cruiser");
  const { default: readOptions } = await import("dependency-cruiser/config-utl/extract-depcruise-options");
  const { default: readTsConfig } = await import("dependency-cruiser/config-utl/extract-ts-config");
  const options = await readOptions(join(root, ".dependency-cruiser.mjs"));
  const tsConfig = readTsConfig(join(root, "tsconfig.base.json"));
  return (await cruise(["packages"], { ...options, baseDir: root }, undefined, { tsConfig })).output;
};

const isOurs = ({ source }) => source.startsWith("packages/");
const tell = ({ rule, from, to, cycle }) =>
  `${rule.name}: ${from} -> ${cycle === undefined ? to : cycle.map(({ name }) => name).join(" -> ")}`;

process.chdir(root); // where the cruiser looks for paths
ensureInstalled();
const { modules, summary } = await cruiseWorkspaces();
const count = modules.filter(isOurs).length;
const problems = summary.violations.map(tell);
if (count < leastModules) problems.push(`only ${count} modules were seen; at least ${leastModules} were expected`);

for (const problem of problems) console.error(problem);
console.log(`${count} modules, ${problems.length} breaches of the walls`);
process.exitCode = problems.length === 0 ? 0 : 1;
