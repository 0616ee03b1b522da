import { areaLabel, dashedBorder } from "../../marks/border.ts";
import type { Cell } from "../../puzzle/canvas.ts";
import type { State } from "../../terms/term.ts";
import { type Area, areaAt, domainsIn, tooManyToDiffer } from "../area.ts";
import { becauseOfProduct } from "../because/product.ts";
import { type CellsProductBody, cellsProduct } from "../bodies/cage.ts";
import { faulty, type Kind } from "../contract.ts";
import { unreachable } from "../in-words.ts";
import { productsNear } from "../products.ts";
import { mayRepeat } from "../readings.ts";

interface ProductCage extends Area {
  readonly product: number;
}

/** The digits multiply to this. Products that have passed it are all alike: only a 0 still changes them. */
const multiplyingTo = (cells: readonly Cell[], product: number) => ({
  cells,
  start: 1,
  next: (sofar: State, digit: number) => Math.min((sofar as number) * digit, product + 1),
  ok: (sofar: State) => sofar === product,
});

export const productCage: Kind<CellsProductBody, ProductCage> = {
  name: "product-cage",
  body: cellsProduct,
  resolve: ({ cells: places, product, tint }, setting) => {
    const area = areaAt(places, tint, setting);
    const domains = domainsIn(setting, area);
    const products = productsNear(domains, product, setting.spend);
    if (products.length === 0) return faulty(tooManyToDiffer(places, domains));
    if (products.includes(product)) return { ...area, product };
    const why = unreachable(domains, { how: "different", values: products, wanted: product });
    return faulty({ at: ["product"], read: String(product), right: `multiplied, ${why}` });
  },
  scopes: ({ cells, product }) => [{ cells, different: true }, multiplyingTo(cells, product)],
  terms: ({ id, cells, product }) => [
    { term: "different", owner: id, cells },
    { term: "automaton", owner: id, ...multiplyingTo(cells, product) },
  ],
  marks: (cage) => [...dashedBorder(cage), areaLabel(cage, `${cage.product}×`)],
  words: ({ cells, product }) => ({
    rule: "In a cage with a times sign digits don't repeat, and they multiply to its number.",
    title: "Product cages",
    noun: "product cage",
    plural: "product cages",
    called: `product cage of ${product}`,
    at: cells,
    holds: `multiply to ${product}`,
  }),
  alsoSaid: ["product", "multipl"],
  readings: [mayRepeat("digits in a product cage may repeat")],
  because: ({ cells, product }, asked) => becauseOfProduct(cells, product, asked),
  relabels: "none",
};
