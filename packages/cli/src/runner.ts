import { CommanderError, Command as Program } from "commander";
import { carryOut, type Order, tell } from "./carry-out.ts";
import type { Command } from "./command.ts";
import { badUsage } from "./faults.ts";
import type { Streams } from "./output.ts";
import { commands } from "./registry.ts";

/** Has a command's work done, here or elsewhere; gives back the exit code. */
export type Launch = (command: Command, order: Order, streams: Streams) => Promise<number>;

const here: Launch = (command, order, streams) => carryOut(command, order, streams, () => false);

const exitCodes = "Exit codes: 0 done, 1 a negative finding, 2 bad input or usage, 3 stopped.";
const exampleOf = ({ example }: Command): string => `For example:\n  ${example}`;

const programFor = (streams: Streams, version: string): Program =>
  new Program("solvewright")
    .description("From a setter's puzzle to a told, checked and published solve.")
    .version(version, "--version", "the version")
    .helpOption("--help", "this text")
    .helpCommand("help [command]", "the same for one command, with an example")
    .exitOverride()
    .configureOutput({
      writeOut: streams.out,
      writeErr: streams.err,
      outputError: () => {}, // told by `tell`, for machines too
      getOutHelpWidth: () => streams.terminal.width,
      getErrHelpWidth: () => streams.terminal.width,
    })
    .addHelpText("after", `\n${exitCodes}`);

const addTo = (program: Program, command: Command, act: (order: Order) => Promise<void>): void => {
  const { name, summary, usage, flags } = command;
  const made = program.command(name).summary(summary).description(`${summary}.`);
  for (const word of usage.split(" ")) made.argument(word.startsWith("[") ? word : `<${word}>`);
  for (const flag of flags) made.option(flag.name, flag.text);
  made.copyInheritedSettings(program).addHelpText("after", `\n${exampleOf(command)}`);
  made.action((...given: unknown[]) => {
    const words = given
      .slice(0, -2)
      .flat()
      .filter((word): word is string => typeof word === "string");
    return act({ words, flags: given.at(-2) as Order["flags"] });
  });
};

/** "error: unknown option '--jsn'\n(Did you mean --json?)" as a sentence of ours. */
const sentence = ({ message }: CommanderError): string => {
  const text = message.replace(/^error: /, "").replace(/\s+/g, " ");
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.?)]$/.test(text) ? "" : "."}`;
};

const misuse = (error: CommanderError, args: readonly string[]) => {
  const command = commands.find(({ name }) => name === args[0]);
  const right = command
    ? `${command.name} ${command.usage}`
    : `a command: ${commands.map(({ name }) => name).join(", ")}`;
  const help = command ? exampleOf(command) : "Try --help.";
  return badUsage(`${sentence(error)} ${help}`, { read: args.join(" "), right });
};

const isHelp = ({ code }: CommanderError): boolean =>
  ["commander.help", "commander.helpDisplayed", "commander.version"].includes(code);

/** Runs the command that these arguments (after the program's name) ask for; gives back the exit code. */
export const run = async (
  args: readonly string[],
  streams: Streams,
  launch: Launch = here,
  version = "0",
): Promise<number> => {
  let code = 0;
  const program = programFor(streams, version);
  for (const command of commands)
    addTo(program, command, async (order) => {
      code = await launch(command, order, streams);
    });
  try {
    await program.parseAsync([...args], { from: "user" });
    return code;
  } catch (error) {
    if (!(error instanceof CommanderError)) return tell(error, args.includes("--json"), streams);
    if (isHelp(error)) return args.length === 0 ? 2 : 0;
    return tell(misuse(error, args), args.includes("--json"), streams);
  }
};
