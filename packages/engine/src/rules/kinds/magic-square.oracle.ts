import { noRepeats, setOf, sumLess } from "../../../test-kit/asp-sets.ts";
import type { Oracle } from "../../../test-kit/index.ts";
import type { Place } from "../../puzzle/canvas.ts";

export const oracle: Oracle = (entry, { n }) => {
  const { at } = entry.body as unknown as { at: Place };
  const three = [0, 1, 2];
  const cell = (down: number, right: number): Place => ({ row: at.row + down, column: at.column + right });
  const lines = [
    ...three.map((down) => three.map((right) => cell(down, right))),
    ...three.map((right) => three.map((down) => cell(down, right))),
    three.map((k) => cell(k, k)),
    three.map((k) => cell(k, 2 - k)),
  ];
  const equal = lines.slice(1).map((_, k) => `:- ${sumLess(`line${n}_0`, `line${n}_${k + 1}`)} != 0.`);
  const block = `block${n}`;
  return [
    setOf(block, lines.slice(0, 3).flat()),
    noRepeats(block),
    ...lines.map((line, k) => setOf(`line${n}_${k}`, line)),
    ...equal,
  ].join("\n");
};
