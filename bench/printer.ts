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

/** Plain lines for people, or a JSON object a line. */
export const printer = ({ json }: Options): Printer =>
  json
    ? {
        line: (text) => void process.stderr.write(`${text}\n`),
        measure: () => {},
        row: (row) => write(JSON.stringify(row)),
      }
    : {
        line: write,
        measure: ({ name, about }) => write(`\n${name}: ${about}`),
        row: (row) => write(told(row)),
      };
