import process from "node:process";
import type { Measure, Row } from "./measures/measure.ts";
import type { Options } from "./options.ts";

interface Printer {
  line(text: string): void;
  measure(measure: Measure): void;
  row(row: Row): void;
}

/** Three figures that count. */
const rounded = (figure: number | string): number | string =>
  typeof figure === "string" ? figure : figure >= 100 ? Math.round(figure) : Number(figure.toPrecision(3));

const told = ({ of, figures }: Row): string =>
  [of.padEnd(24), ...Object.entries(figures).map(([name, figure]) => `${name} ${rounded(figure)}`)].join("  ");

const write = (text: string): void => void process.stdout.write(`${text}\n`);

const beside = (text: string): void => void process.stderr.write(`${text}\n`);

const cells = (list: readonly (number | string)[]): string => `| ${list.join(" | ")} |`;

/** A table a measure, the head of which is its first row's. */
const tables = (): Printer => {
  let isFirst = true;
  return {
    line: beside,
    measure: ({ name, about }) => {
      isFirst = true;
      write(`\n## ${name}\n\n${about}\n`);
    },
    row: ({ of, figures }) => {
      const names = Object.keys(figures);
      if (isFirst) write([cells(["of", ...names]), cells(["---", ...names.map(() => "--:")])].join("\n"));
      isFirst = false;
      write(cells([of, ...Object.values(figures).map(rounded)]));
    },
  };
};

/** Plain lines for people, a JSON object a line, or tables. */
export const printer = ({ json, markdown }: Options): Printer => {
  if (markdown) return tables();
  return json
    ? { line: beside, measure: () => {}, row: (row) => write(JSON.stringify(row)) }
    : {
        line: write,
        measure: ({ name, about }) => write(`\n${name}: ${about}`),
        row: (row) => write(told(row)),
      };
};
