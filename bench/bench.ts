import process from "node:process";
import { measures } from "./measures/registry.ts";
import { absent } from "./measures/soundness.ts";
import { help, optionsFrom } from "./options.ts";
import { printer } from "./printer.ts";

const options = optionsFrom(process.argv.slice(2));
if (!options) process.stdout.write(help);
else {
  const print = printer(options);
  const missing = absent(options);
  if (missing !== undefined) print.line(missing);
  for (const measure of measures) {
    let isFirst = true;
    for await (const row of measure.rows(options)) {
      if (isFirst) print.measure(measure);
      isFirst = false;
      print.row(row);
    }
  }
}
