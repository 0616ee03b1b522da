import { both, isEmpty } from "../../board/digits.ts";
import { chevrons } from "../../marks/chevrons.ts";
import { type PathBody, paths } from "../bodies/path.ts";
import { faulty, type Kind } from "../contract.ts";
import { holding } from "../edge.ts";
import { digitsText } from "../in-words.ts";
import { endsOf, type Line, lineOf, mirrored } from "../line.ts";

const isSame = (first: number, second: number): boolean => first === second;

export const palindrome: Kind<PathBody, Line> = {
  name: "palindrome",
  body: paths({ least: 2 }),
  resolve: ({ cells: places }, setting) => {
    const line = lineOf(places, setting);
    const { domains, canvas } = setting;
    const apart = mirrored(line.cells).filter(([a, b]) => isEmpty(both(domains[a]!, domains[b]!)));
    if (apart.length === 0) return line;
    return faulty(
      ...apart.map(([a, b]) => ({
        at: ["cells"],
        read: `${canvas.names[a]} and ${canvas.names[b]}`,
        right: `cells that can hold the same digit; these have ${digitsText(domains[a]!)} and ${digitsText(domains[b]!)}`,
      })),
    );
  },
  scopes: ({ cells }) => mirrored(cells).map((pair) => holding(pair, isSame)),
  terms: ({ id, cells }) => mirrored(cells).map((pair) => ({ term: "equal", owner: id, cells: pair })),
  marks: ({ points }) => chevrons(points),
  words: ({ cells }) => ({
    rule: "Digits on a palindrome read the same from both ends.",
    title: "Palindromes",
    noun: "palindrome",
    plural: "palindromes",
    at: endsOf(cells),
    holds: "read the same from both ends",
  }),
  alsoSaid: ["palindrom", "reads the same", "read the same"],
  relabels: "any",
};
