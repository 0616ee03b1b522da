import { expect, test } from "vitest";
import { earOn } from "./ear.ts";
import { kettle, kettleDigit, mill } from "./puzzles.ts";
import { desktop, inBrowser, visit } from "./visit.ts";

const placeIn = (name: string): readonly [row: number, column: number] => {
  const [, row, column] = /^row (\d+), column (\d+)/.exec(name)!;
  return [Number(row), Number(column)];
};

inBrowser("by keyboard and ear, from the accessibility tree alone", () => {
  test("the grid is a grid with named cells, and the puzzle can be solved", async () => {
    await visit(kettle, desktop, async ({ page, press, helped }) => {
      await helped();
      const ear = await earOn(page);
      expect((await ear.all("grid")).map(({ name }) => name)).toEqual(["Kettle, the board"]);
      expect(await ear.all("row")).toHaveLength(4);
      const cells = await ear.all("gridcell");
      expect(cells.map(({ name }) => name).slice(0, 3)).toEqual([
        "row 1, column 1, empty, cage of 3, greater-than sign to the right, this is the greater",
        "row 1, column 2, empty, cage of 3, greater-than sign to the left, this is the smaller",
        "row 1, column 3, empty, black dot below",
      ]);
      expect(cells.at(-1)!.name).toBe("row 4, column 4, given 2");
      expect((await ear.all("heading")).map(({ name }) => name)).toEqual(
        expect.arrayContaining(["Kettle", "Rules", "In the words of Wren Oake"]),
      );

      while ((await ear.focused())?.role !== "gridcell") await press("Tab");
      for (let k = 0; k < 15; k++) {
        const [row, column] = placeIn((await ear.focused()).name);
        await press(String(kettleDigit(row, column)));
        expect(await ear.said()).toBe(`mark ${kettleDigit(row, column)}`);
        await press("Enter", ...(column === 4 ? ["Home", "ArrowDown"] : ["ArrowRight"]));
      }
      await expect.poll(ear.said).toBe("Kettle is finished. Every digit is in its place.");
      expect((await ear.all("heading")).map(({ name }) => name)).toContain("That was the last one.");
    });
  });

  test("a nudge and a reason are announced with places, never with “this one”", async () => {
    await visit(kettle, desktop, async ({ page, press, helped }) => {
      await helped();
      const ear = await earOn(page);
      const next = async (key: string): Promise<string> => {
        const before = await ear.said();
        await press(key);
        await expect.poll(ear.said).not.toBe(before);
        return ear.said();
      };
      await press("Tab");
      expect(await next("n")).toMatch(/^(Look at|One cell)/);
      expect(await next("n")).not.toBe("");
      const line = await next("n");
      expect(line).toMatch(/row \d|column \d/);
      expect(line).not.toMatch(/\b(this|these|here)\b/);
      await press("Escape", "w");
      expect((await ear.focused()).role).toBe("button");
      const answer = await next("4");
      expect(answer).toMatch(/row 1, column 1/);
      expect(answer).not.toMatch(/\b(this|these|here)\b/);
      expect((await ear.focused()).name).toBe("4");
      await press("Escape");
      expect((await ear.focused()).role).toBe("gridcell");
    });
  });

  test("a shared cell has all its names, and grids can be gone through", async () => {
    await visit(mill, desktop, async ({ page, press }) => {
      const ear = await earOn(page);
      await press("Tab", "PageDown");
      expect((await ear.focused()).name).toMatch(/^row 1, column 1 of the mill, empty/);
      await press("ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight");
      expect((await ear.focused()).name).toBe(
        "row 4, column 1 of the yard and row 1, column 6 of the mill, empty, X to the left",
      );
      await press("g", "1");
      expect(await ear.said()).toBe("The yard alone");
    });
  });
});
