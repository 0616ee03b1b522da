import { describe, expect, test } from "vitest";
import { long, mill, small } from "../../test-kit/grounds.ts";
import type { Ground } from "../solve/ground.ts";
import { appFor } from "./app.ts";
import { keyOf } from "./keys.ts";
import { touching } from "./move-actions.ts";

/** Presses keys one after the other, as the board hears them. */
const typist = (ground: Ground) => {
  let now = 0;
  const app = appFor(ground, () => (now += 1000));
  const press = (...keys: string[]) => {
    for (const key of keys) {
      const action = app.actions.find((action) => action.keys.includes(key) && action.when(app.state(), app.moment()));
      if (action) app.run(action.id);
    }
    return app.state();
  };
  const choose = (...cells: string[]) =>
    app.update((state, moment) =>
      cells.reduce((next, cell, k) => touching(next, cell, k === 0 ? "alone" : "also", moment), state),
    );
  return { app, press, choose };
};

describe("keys", () => {
  test("no key does two things at once", () => {
    for (const ground of [small, mill, long]) {
      const keys = appFor(ground, () => 0).actions.flatMap((action) => action.keys);
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  test("every action has a name of its own", () => {
    const { actions } = appFor(mill, () => 0);
    expect(new Set(actions.map(({ id }) => id)).size).toBe(actions.length);
    const app = appFor(mill, () => 0);
    for (const action of actions) expect(action.label(app.state(), app.moment())).not.toBe("");
  });

  test.each([
    [{ key: "a", ctrlKey: true }, "Mod+a"],
    [{ key: "Z", metaKey: true, shiftKey: true }, "Mod+Shift+z"],
    [{ key: "ArrowLeft", shiftKey: true }, "Shift+ArrowLeft"],
    [{ key: "R", shiftKey: false }, "r"],
    [{ key: "5", code: "Numpad5" }, "5"],
    [{ key: "+", shiftKey: true }, "+"],
  ])("%j is %s", (event, expected) => {
    expect(keyOf({ ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...event })).toBe(expected);
  });
});

describe("entry", () => {
  test("digits are marks while a selection is open, Enter settles what holds one", () => {
    const { press, choose } = typist(small);
    choose("r1c2", "r2c2");
    expect(press("3").position.marks).toEqual({ r1c2: [3], r2c2: [3] });
    choose("r2c2");
    press("4");
    choose("r1c2", "r2c2");
    expect(press("Enter").position).toMatchObject({ settled: { r1c2: 3 }, marks: { r2c2: [4] } });
  });

  test("nothing is typed where nothing is chosen", () => {
    expect(typist(small).press("3").done).toEqual([]);
  });

  test("a letter and a digit write one spot mark, and the next digit is a mark again", () => {
    const { press, choose } = typist(small);
    choose("r1c2");
    const { position } = press("r", "3", "4");
    expect(position.spots).toEqual([{ digit: 3, house: "main/row/1", cells: ["r1c2"] }]);
    expect(position.marks).toEqual({ r1c2: [4] });
  });

  test("the letter again takes the other grid's house, and says which", () => {
    const { press, choose } = typist(mill);
    choose("r4c6");
    expect(press("c").said.text).toBe("Next digit: where column 1 of the yard can hold it.");
    expect(press("c").said.text).toBe("Next digit: where column 6 of the mill can hold it.");
    expect(press("5").position.spots[0]!.house).toBe("mill/column/6");
  });

  test("above 9 Space or Enter ends a number; what can't grow ends itself", () => {
    const { press, choose } = typist(long);
    choose("r1c2");
    expect(press("1").position.marks).toEqual({});
    expect(press(" ").position.marks).toEqual({ r1c2: [1] });
    expect(press("1", "2", "5").position.marks).toEqual({ r1c2: [1, 5, 12] });
    choose("r1c3");
    expect(press("1", "Enter").position.settled).toEqual({ r1c3: 1 });
  });

  test("what a grid does not have is refused with a word", () => {
    const { press, choose } = typist(mill);
    choose("r1c6");
    expect(press("8")).toMatchObject({ done: [], remark: "The yard has no 8." });
    const given = typist(small);
    given.choose("r1c1");
    expect(given.press("2").remark).toBe("That digit is given.");
  });

  test("undo, redo and beginning again", () => {
    const { app, press, choose } = typist(small);
    choose("r1c2");
    press("3", "Enter", "Mod+z");
    expect(app.state().position).toMatchObject({ settled: {}, marks: { r1c2: [3] } });
    expect(app.state().said.text).toBe("Undone: row 1, column 2, mark 3");
    expect(press("Mod+Shift+z").position.settled).toEqual({ r1c2: 3 });
    app.run("begin-again");
    expect(app.state().position.settled).toEqual({});
    expect(press("Mod+z").position.settled).toEqual({ r1c2: 3 });
  });

  test("everything done is noted with its time", () => {
    const { press, choose } = typist(small);
    choose("r1c2");
    const { log } = press("3", "Enter", "Mod+z");
    expect(log.map(({ did }) => did)).toEqual(["mark", "settle", "undo"]);
    expect(log.every(({ at }, k) => k === 0 || at > log[k - 1]!.at)).toBe(true);
  });
});

describe("moving", () => {
  test("arrows go from cell to cell, over gaps, and stop at edges", () => {
    const { press, choose } = typist(mill);
    choose("r4c5");
    expect(press("ArrowRight").at).toBe("r4c6");
    choose("r1c6");
    expect(press("ArrowLeft").at).toBe("r1c6");
    expect(press("ArrowUp").at).toBe("r1c6");
  });

  test("Shift extends, Escape ends the set", () => {
    const { press, choose } = typist(small);
    choose("r1c2");
    expect(press("Shift+ArrowRight", "Shift+ArrowDown").chosen).toEqual(["r1c2", "r1c3", "r2c3"]);
    expect(press("Escape").chosen).toEqual([]);
  });

  test("Page Down goes through the grids, the topmost first", () => {
    const { press } = typist(mill);
    expect(press("PageDown").at).toBe("r4c1");
    expect(press("PageDown").at).toBe("r1c6");
  });

  test("Home and End keep to the row, with Ctrl they go through the board", () => {
    const { press, choose } = typist(mill);
    choose("r5c5");
    expect(press("Home").at).toBe("r5c1");
    expect(press("End").at).toBe("r5c11");
    expect(press("Mod+End").at).toBe("r11c8");
  });
});

test("G and a number look at one grid alone, 1 the topmost; G again lets go", () => {
  const { press, choose } = typist(mill);
  choose("r1c6");
  expect(press("g", "1")).toMatchObject({ lens: 1, done: [], said: { text: "The yard alone" } });
  expect(press("g").lens).toBeUndefined();
  expect(press("g", "2").lens).toBe(0);
  expect(press("Escape").lens).toBeUndefined();
});

test("a cell chosen before is not let go by a new selection's digit", () => {
  const { app, press } = typist(small);
  app.update((state, moment) => touching(state, "r2c2", "alone", moment));
  app.update((state, moment) => touching(state, "r3c4", "through", moment));
  expect(app.state().chosen).toEqual(["r2c2", "r2c3", "r2c4", "r3c2", "r3c3", "r3c4"]);
  expect(Object.keys(press("1").position.marks)).toHaveLength(6);
});
