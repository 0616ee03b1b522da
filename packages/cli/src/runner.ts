import { CommanderError, Command as Program } from "commander";
import { type Asked, type ExitCode, type Output, UsageError } from "./command.ts";
import { FileProblems, problemLines } from "./puzzle-file.ts";
import { commands, type Listed } from "./registry.ts";

/** Where everything goes; tests bring their own. */
export interface Streams {
  out(text: string): void;
  err(text: string): void;
  readonly isTerminal: boolean;
}

const outputTo = ({ out, err, isTerminal }: Streams): Output & { done(): void } => {
  let isShown = false;
  const clear = (): void => {
    if (isShown && isTerminal) err("\r\u001b[K");
    isShown = false;
  };
  return {
    line: (text) => {
      clear();
      out(`${text}\n`);
    },
    json: (value) => {
      clear();
      out(`${JSON.stringify(value)}\n`);
    },
    progress: (text) => {
      if (!isTerminal) return;
      err(`\r\u001b[K${text}`);
      isShown = true;
    },
    done: clear,
  };
};

const told = (error: unknown, asksJson: boolean, streams: Streams): number => {
  if (error instanceof FileProblems) {
    if (asksJson) streams.out(`${JSON.stringify({ problems: error.problems })}\n`);
    else streams.err(problemLines(error));
    return 2;
  }
  if (error instanceof UsageError) {
    streams.err(`${error.message}\n`);
    return 2;
  }
  streams.err(
    `Something is wrong in Solvewright itself, not in your file: ${error instanceof Error ? error.stack : error}\n`,
  );
  return 70;
};

const added = (
  program: Program,
  listed: Listed,
  streams: Streams,
  stopped: () => boolean,
  end: (code: number) => void,
): void => {
  const command = program.command(listed.name).summary(listed.summary).description(`${listed.summary}.`);
  for (const word of listed.usage.split(" ")) command.argument(word.startsWith("[") ? word : `<${word}>`);
  for (const { name, text } of listed.flags) command.option(name, text);
  command.addHelpText("after", `\nFor example:\n  ${listed.example}`);
  command.action(async (...given: unknown[]) => {
    const flags = given.at(-2) as Asked["flags"];
    const words = given.slice(0, -2).filter((word): word is string => typeof word === "string");
    const out = outputTo(streams);
    try {
      const { run } = await listed.load();
      const code: ExitCode = await run({ words, flags, out, stopped });
      out.done();
      end(code);
    } catch (error) {
      out.done();
      end(told(error, flags.json === true, streams));
    }
  });
};

/** Runs the command that these arguments (after the program's name) ask for; gives back the exit code. */
export const run = async (
  args: readonly string[],
  streams: Streams,
  stopped: () => boolean = () => false,
): Promise<number> => {
  let code = 0;
  const program = new Program("solvewright")
    .description("From a setter's puzzle to a told, checked and published solve.")
    .exitOverride()
    .configureOutput({ writeOut: streams.out, writeErr: streams.err })
    .showHelpAfterError("Try --help, which has an example.");
  program.addHelpText("after", "\nExit codes: 0 done, 1 a negative finding, 2 bad input or usage, 3 stopped.");
  for (const listed of commands) {
    added(program, listed, streams, stopped, (ended) => {
      code = ended;
    });
    program.commands.at(-1)!.exitOverride().configureOutput({ writeOut: streams.out, writeErr: streams.err });
  }
  try {
    await program.parseAsync([...args], { from: "user" });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return error.exitCode === 0 ? 0 : 2;
  }
  return code;
};
