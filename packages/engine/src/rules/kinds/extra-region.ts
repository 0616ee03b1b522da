import { count } from "../../board/digits.ts";
import { ruledAcross } from "../../marks/fills.ts";
import type { Place } from "../../puzzle/canvas.ts";
import { tooManyToDiffer } from "../area.ts";
import { cells as cellsBody, type SetBody } from "../bodies/cells.ts";
import { cellsAt, digitsIn } from "../cells.ts";
import { type Bound, faulty, type Kind } from "../contract.ts";
import { canAllDiffer } from "../reachable.ts";

interface ExtraRegion extends Bound {
  readonly places: readonly Place[];
  /** It holds every digit once. */
  readonly complete: boolean;
}

export const extraRegion: Kind<SetBody, ExtraRegion> = {
  name: "extra-region",
  body: cellsBody,
  resolve: ({ cells: places }, setting) => {
    const cells = cellsAt(setting, places);
    const domains = cells.map((cell) => setting.domains[cell]!);
    if (!canAllDiffer(domains)) return faulty(tooManyToDiffer(places, domains));
    return { cells, places, complete: count(digitsIn(setting, cells)) === cells.length };
  },
  scopes: ({ id, cells, complete }) => [{ cells, different: true, ...(complete ? { house: id } : {}) }],
  terms: ({ id, cells }) => [{ term: "different", owner: id, cells }],
  marks: ({ places }) => ruledAcross(places),
  words: ({ cells, complete }) => ({
    rule: complete
      ? "An area ruled across is an extra region: it holds every digit once."
      : "Digits in an area ruled across don't repeat.",
    title: "Extra regions",
    noun: "extra region",
    plural: "extra regions",
    at: cells,
    holds: complete ? "hold every digit once" : "don't repeat",
  }),
  alsoSaid: ["additional region", "region"],
  relabels: "any",
};
