/** What was read and what would be right; a fault in a file has its place there. */
export interface Fault {
  readonly line?: number;
  readonly column?: number;
  readonly read: string;
  readonly right: string;
  readonly path?: string;
}

/** Bad input or usage: exit code 2. `message` is for people, `problems` for machines. */
export class BadInput extends Error {
  readonly problems: readonly Fault[];
  constructor(message: string, problems: readonly Fault[]) {
    super(message);
    this.problems = problems;
  }
}

/** A word or flag that a command can't take. */
export const badUsage = (message: string, fault: Fault): BadInput => new BadInput(message, [fault]);
