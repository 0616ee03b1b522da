import { expect, test } from "vitest";
import { dataIn } from "../../test-kit/unpacked.ts";
import type { PageData } from "./page-data.ts";
import { dataMark, pageOf, titleMark } from "./page-of.ts";

const template = `<title>${titleMark}</title><script type="text/plain" id="puzzle">${dataMark}</script>`;
const dataWith = (title: string): PageData => ({
  page: 1,
  fingerprint: "0",
  puzzle: { title, grids: [], givens: {}, rules: [] },
  setters: [],
  places: [],
  cells: [],
  houses: [],
  groups: [],
  clues: [],
  rules: [],
  missing: [],
  unchecked: [],
});

test.each(["Paper Mill", "</script><b>", "<!--", "$& and $1 and $`", `"'\\`, titleMark, dataMark, "\u2028 é"])(
  "a puzzle called %s comes out as it was put in",
  (title) => {
    const page = pageOf(template, dataWith(title));
    expect(dataIn(page)).toEqual(dataWith(title));
    expect(page.match(/<\/script>/g)).toHaveLength(1);
    expect(page).not.toContain("<!--");
  },
);

test("a file that is no built page is refused", () => {
  expect(() => pageOf("<html></html>", dataWith("Paper Mill"))).toThrow("no built try-it page");
});
