/** Runs every `check:` script of package.json and ends with `N passed, N failed`: each test, and each other check as one. */
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { ensureInstalled, root } from "./install.mjs";

const PATH = [join(root, "node_modules/.bin"), process.env.PATH].join(delimiter);
const tests = "check:tests";

const scripts = () => JSON.parse(readFileSync(join(root, "package.json"), "utf8")).scripts;
const checksIn = (all) => Object.entries(all).filter(([name]) => name.startsWith("check:"));

const finished = (child) =>
  new Promise((resolve) => {
    child.on("error", () => resolve(false));
    child.on("close", (code) => resolve(code === 0));
  });

/** Runs quietly; what was printed is shown when it failed. */
const runQuietly = async ([name, command]) => {
  const start = performance.now();
  const child = spawn(command, {
    cwd: root,
    shell: true,
    env: { ...process.env, PATH },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const printed = [];
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (text) => printed.push(text));
  const passed = await finished(child);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  if (!passed) process.stdout.write(Buffer.concat(printed));
  console.log(`${passed ? "passed" : "FAILED"}  ${name}  ${seconds} s`);
  return passed;
};

/** A file that could not be loaded holds no test, but is a failure. */
const brokenFiles = ({ testResults }) =>
  testResults.filter(({ status, assertionResults }) => status === "failed" && assertionResults.length === 0).length;

const counted = (report, passed) => {
  const failed = report.numFailedTests + brokenFiles(report);
  return {
    passed: report.numPassedTests,
    failed: passed ? failed : Math.max(failed, 1),
    skipped: report.numPendingTests,
  };
};

const reportIn = (file) => {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch {
    return { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, testResults: [] }; // it died before its report
  }
};

const runTests = async (command) => {
  const folder = mkdtempSync(join(tmpdir(), "solvewright-"));
  const file = join(folder, "tests.json");
  const child = spawn(`${command} --reporter=default --reporter=json --outputFile.json="${file}"`, {
    cwd: root,
    shell: true,
    env: { ...process.env, PATH },
    stdio: ["ignore", "inherit", "inherit"],
  });
  const passed = await finished(child);
  const counts = counted(reportIn(file), passed);
  rmSync(folder, { recursive: true });
  return counts;
};

/** Two at a time, for two cores. */
const runInTwoLanes = async (checks) => {
  const waiting = [...checks];
  const results = [];
  const lane = async () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) results.push(await runQuietly(next));
  };
  await Promise.all([lane(), lane()]);
  return results;
};

/** The tests have the machine to themselves, since some of them measure time. `before`: what passed (or not) earlier. */
export const check = async (before = []) => {
  const all = checksIn(scripts());
  const results = [...before, ...(await runInTwoLanes(all.filter(([name]) => name !== tests)))];
  const counts = await runTests(all.find(([name]) => name === tests)[1]);
  const passed = counts.passed + results.filter((result) => result).length;
  const failed = counts.failed + results.filter((result) => !result).length;
  console.log(`${passed} passed, ${failed} failed${counts.skipped > 0 ? `, ${counts.skipped} skipped` : ""}`);
  return failed === 0;
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureInstalled();
  process.exitCode = (await check()) ? 0 : 1;
}
