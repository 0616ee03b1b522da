import type { Oracle } from "../../../test-kit/index.ts";
import type { Place } from "../../puzzle/canvas.ts";

export const oracle: Oracle = (entry) => {
  const { areas } = entry.body as unknown as { areas: readonly (readonly Place[])[] };
  const [first, ...others] = areas;
  const differ = (a: Place, b: Place): string => `:- v(${a.row},${a.column},X), v(${b.row},${b.column},Y), X != Y.`;
  return others.flatMap((other) => other.map((place, k) => differ(first![k]!, place))).join("\n");
};
