import { run } from "./runner.ts";

let isStopped = false;
process.on("SIGINT", () => {
  if (isStopped) process.exit(3);
  isStopped = true;
});

void run(
  process.argv.slice(2),
  {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    isTerminal: process.stderr.isTTY === true,
  },
  () => isStopped,
).then((code) => {
  process.exitCode = code;
});
