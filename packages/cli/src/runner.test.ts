import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { accept, fingerprint, read } from "@solvewright/engine";
import { describe, expect, test } from "vitest";
import { dataIn } from "../../press/test-kit/unpacked.ts";
import { carryOut } from "./carry-out.ts";
import { commands } from "./registry.ts";
import { run } from "./runner.ts";
import { schemas } from "./schemas/published.ts";

const demo = fileURLToPath(new URL("../../../examples/paper-mill.puzzle.yaml", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "solvewright-"));

const file = (name: string, grid: string): string => {
  const path = join(folder, name);
  writeFileSync(
    path,
    `puzzle: 1\ntitle: Small\nsetter: { name: us, permission: own }\ngrids:\n  - { id: main, size: 4 }\n${grid}`,
  );
  return path;
};
const one = file("one.puzzle.yaml", "givens:\n  main: |\n    12.4\n    34..\n    2...\n    ..1.\n");
const several = file("several.puzzle.yaml", "givens: { cells: { r1c1: 1 } }\n");
const none = file(
  "none.puzzle.yaml",
  "givens: { cells: { r1c1: 1 } }\nrules:\n  - cage: { cells: r1c2 r1c3, sum: 3 }\n",
);
const faulty = file("faulty.puzzle.yaml", "rules:\n  - thermometre: r1c1 r1c2\n");

const asked = async (args: readonly string[], stopped = () => false) => {
  const said: { out: string[]; err: string[] } = { out: [], err: [] };
  const streams = {
    out: (text: string) => void said.out.push(text),
    err: (text: string) => void said.err.push(text),
    terminal: { rewrites: false, colours: false, width: 80 },
  };
  const code = await run(args, streams, (command, order) => carryOut(command, order, streams, stopped));
  return { code, out: said.out.join(""), err: said.err.join("") };
};

describe("exit codes", () => {
  test.each([
    ["one solution", ["check", one], 0],
    ["several", ["check", several], 1],
    ["none", ["check", none], 1],
    ["a faulty file", ["check", faulty], 2],
    ["no such file", ["check", join(folder, "nowhere.yaml")], 2],
    ["no such command", ["chek", one], 2],
    ["a plan of an unsound puzzle", ["plan", several], 1],
    ["a level that is none", ["plan", one, "--level", "9"], 2],
    ["a cell that is none", ["why", one, "r9c9"], 2],
    ["help", ["plan", "--help"], 0],
  ])("%s", async (_, args, code) => expect((await asked(args)).code).toBe(code));
  test("stopped", async () => expect((await asked(["plan", demo], () => true)).code).toBe(3));
});

test.each(commands)("the help of $name has its example", async ({ name, example }) =>
  expect((await asked([name, "--help"])).out).toContain(example),
);

describe("for machines", () => {
  test.each([
    ["check", "one solution", ["check", one]],
    ["check", "several", ["check", several]],
    ["check", "none", ["check", none]],
    ["why", "a digit that can't be", ["why", one, "r1c3", "4"]],
    ["why", "no digit named", ["why", one, "r1c3"]],
    ["pack", "a pack", ["pack", one, "--to", join(folder, "schema")]],
    ["correct", "a correction", ["correct", one, "--was", several, "--to", join(folder, "corrected-schema")]],
    ["booklet", "a booklet", ["booklet", one, one, "--to", join(folder, "schema.pdf")]],
    ["problems", "a correction of nothing", ["correct", one]],
    ["problems", "a paper that is none", ["booklet", one, "--paper", "vellum"]],
    ["problems", "a beat that is none", ["pack", one, "--beats", "99"]],
    ["unplanned", "a booklet with a puzzle of several", ["booklet", one, several]],
    ["unplanned", "a plan of several", ["plan", several]],
    ["unplanned", "a pack of none", ["pack", none]],
    ["problems", "a faulty file", ["check", faulty]],
    ["problems", "no such file", ["plan", join(folder, "nowhere.yaml")]],
    ["problems", "no such command", ["chek", one]],
  ] as const)("%s.schema.json holds for %s", async (name, _, args) => {
    const { out } = await asked([...args, "--json"]);
    expect(schemas[name].safeParse(JSON.parse(out)).error).toBeUndefined();
  });
  test("check gives verdict, solutions and worth", async () => {
    const found = JSON.parse((await asked(["check", one, "--json"])).out);
    expect(found).toMatchObject({ verdict: "one", differ: [], leftOut: [] });
    expect(Object.keys(found.solutions[0]).length).toBe(16);
    expect(found.givens.every(({ worth }: { worth: string }) => ["needed", "redundant"].includes(worth))).toBe(true);
  });
  test("problems come with line, column, read, right and path", async () => {
    const { out } = await asked(["check", faulty, "--json"]);
    expect(JSON.parse(out).problems).toMatchObject([
      {
        line: 7,
        column: 5,
        read: "thermometre",
        right: expect.stringContaining("thermometer"),
        path: expect.any(String),
      },
    ]);
  });
  test("plan gives steps in running order and nothing unshown", async () => {
    const plan = JSON.parse((await asked(["plan", one, "--json"])).out);
    expect(plan).toMatchObject({ solved: true, unshown: 0 });
    expect(plan.steps.map(({ n }: { n: number }) => n)).toEqual(plan.steps.map((_: unknown, k: number) => k + 1));
  });
  test("why says that a right digit can be, without giving it away", async () => {
    const found = JSON.parse((await asked(["why", one, "r1c3", "3", "--json"])).out);
    expect(["can", "cannot"]).toContain(found.answer);
  });
});

test.each([
  ["several", several, ["first-solution.svg", "second-solution.svg"]],
  ["none", none, ["clash.svg"]],
])("check draws what it found: %s", async (name, puzzle, files) => {
  const to = join(folder, `drawn-${name}`);
  await asked(["check", puzzle, "--pictures", to]);
  expect(readdirSync(to).sort()).toEqual(files);
  for (const file of files) expect(readFileSync(join(to, file), "utf8")).toMatch(/^<svg/);
});

describe("pack", () => {
  const to = join(folder, "pack");
  test("writes whole files, says what to open, and the same bytes twice", async () => {
    const { code, out } = await asked(["pack", one, "--to", to]);
    expect({ code, says: out.includes(to) }).toEqual({ code: 0, says: true });
    const names = readdirSync(to);
    expect(names.filter((name) => name.endsWith(".part"))).toEqual([]);
    expect(names).toEqual(
      expect.arrayContaining([
        ...["puzzle.svg", "puzzle.png", "solution.svg", "rules.txt", "script.md", "chapters.vtt"],
        ...["try-it.html", "manifest.json"],
      ]),
    );
    const manifest = JSON.parse(readFileSync(join(to, "manifest.json"), "utf8"));
    expect(schemas.manifest.safeParse(manifest).error).toBeUndefined();
    expect(manifest.files.map(({ name }: { name: string }) => name).sort()).toEqual(
      names.filter((name) => name !== "manifest.json").sort(),
    );
    const before = names.map((name) => readFileSync(join(to, name), "utf8"));
    await asked(["pack", one, "--to", to]);
    expect(names.map((name) => readFileSync(join(to, name), "utf8"))).toEqual(before);
  });
  test("leaves a file that was changed by hand, unless forced", async () => {
    writeFileSync(join(to, "rules.txt"), "mine");
    expect((await asked(["pack", one, "--to", to])).out).toContain("rules.txt");
    expect(readFileSync(join(to, "rules.txt"), "utf8")).toBe("mine");
    await asked(["pack", one, "--to", to, "--force"]);
    expect(readFileSync(join(to, "rules.txt"), "utf8")).not.toBe("mine");
  });
});

describe("pack, with more pictures", () => {
  test("draws beats, light and dark, and says the day", async () => {
    const to = join(folder, "pictures");
    await asked(["pack", one, "--to", to, "--beats", "all", "--dark", "--date", "2026-11-27"]);
    const beats = readdirSync(to).filter((name) => name.startsWith("beat-"));
    expect(beats.length).toBeGreaterThan(0);
    for (const name of beats.filter((name) => name.endsWith("-dark.png")))
      expect(beats).toContain(name.replace("-dark.png", ".svg"));
    expect(readFileSync(join(to, "note-to-setter.txt"), "utf8")).toBeDefined();
    expect(JSON.parse(readFileSync(join(to, "manifest.json"), "utf8")).date).toBe("Friday 27 November 2026");
  });
});

test("pack says why there is no rehearsal video where ffmpeg is missing, and writes all else", async () => {
  const { PATH } = process.env;
  process.env.PATH = "";
  const to = join(folder, "silent");
  const { code, err } = await asked(["pack", one, "--to", to, "--video"]);
  process.env.PATH = PATH;
  expect({ code, says: err.includes("there is no ffmpeg on the PATH") }).toEqual({ code: 0, says: true });
  expect(readdirSync(to)).toContain("script.pdf");
  expect(readdirSync(to)).not.toContain("rehearsal.mp4");
});

describe("correct", () => {
  test("tells what differs and makes a page that takes over", async () => {
    const to = join(folder, "correction");
    const { code, out } = await asked(["correct", one, "--was", several, "--to", to]);
    expect({ code, says: out.includes("more than one solution") }).toEqual({ code: 0, says: true });
    expect(readdirSync(to).sort()).toEqual(["erratum.txt", "manifest.json", "pinned.txt", "try-it.html"]);
    const was = fingerprint(accept(read(readFileSync(several, "utf8")))!);
    expect(dataIn(readFileSync(join(to, "try-it.html"), "utf8"))).toMatchObject({ formerly: was });
    expect(readFileSync(join(to, "erratum.txt"), "utf8")).toContain("Left out: Row 1, column 2: given 2.");
  });
  test("makes nothing of a puzzle that is not right itself", async () =>
    expect((await asked(["correct", several, "--was", one])).code).toBe(1));
});

test("booklet makes one PDF of several puzzles", async () => {
  const to = join(folder, "booklet.pdf");
  const { code, out } = await asked(["booklet", one, one, one, "--to", to, "--title", "Three", "--paper", "letter"]);
  expect({ code, says: out.includes(to) }).toEqual({ code: 0, says: true });
  // Contents, three sheets, one page of solutions.
  expect(readFileSync(to, "latin1").match(/\/Type \/Page\b/g)).toHaveLength(5);
});

describe("why from a board", () => {
  const print = fingerprint(accept(read(readFileSync(one, "utf8")))!);
  const board = (name: string, content: object): string => {
    const path = join(folder, name);
    writeFileSync(path, JSON.stringify({ board: 1, puzzle: print, ...content }));
    return path;
  };
  const answer = async (...args: string[]) => JSON.parse((await asked(["why", one, ...args, "--json"])).out);
  // By hand: the grid is 1234 3421 2143 4312.
  test("a digit that is right is not given away", async () =>
    expect(await answer("r1c3", "3")).toMatchObject({ answer: "can", steps: [] }));
  test("a wrong entry is pointed out first and left aside", async () => {
    const found = await answer("r2c3", "3", "--board", board("wrong.json", { settled: { r1c3: 3, r4c1: 3 } }));
    expect(found).toMatchObject({ answer: "cannot", wrong: ["r4c1"] });
    expect(found.say).toMatch(/^Row 4, column 1 is wrong/);
  });
  test("what is settled there is leant on", async () => {
    const found = await answer("r2c4", "2", "--board", board("right.json", { settled: { r2c3: 2 } }));
    expect(found.steps).toHaveLength(1);
    expect(found.steps[0].because.facts).toEqual({ r2c3: [2] });
  });
  test.each([
    ["another puzzle's", { puzzle: "0" }],
    ["with a cell that is none", { settled: { r9c9: 1 } }],
    ["with a digit that can't be", { marks: { r1c3: [9] } }],
    ["with a spot mark in no house", { spots: [{ digit: 1, house: "main/row/9", cells: ["r1c3"] }] }],
    ["with a spot mark outside its house", { spots: [{ digit: 1, house: "main/row/1", cells: ["r2c3"] }] }],
    ["with a spot mark in no cell", { spots: [{ digit: 1, house: "main/row/1", cells: ["r9c9"] }] }],
  ])("a board file %s is refused", async (_, content) => {
    const { code, err } = await asked(["why", one, "r1c3", "3", "--board", board("odd.json", content)]);
    expect(code).toBe(2);
    expect(err).toContain("Right: ");
  });
  test("marks that leave the right digit or place out are pointed out and left aside", async () => {
    const spots = [
      { digit: 4, house: "main/row/2", cells: ["r2c3", "r2c4"] },
      { digit: 1, house: "main/row/2", cells: ["r2c3", "r2c4"] },
    ];
    const found = await answer("r2c3", "4", "--board", board("marks.json", { marks: { r3c2: [3, 4] }, spots }));
    expect(found).toMatchObject({ answer: "cannot", wrongMarks: ["r3c2"], wrongSpots: [spots[0]] });
    expect(found.say).toMatch(/^The marks in row 3, column 2 leave .* The places marked for 4 in row 2 leave /);
  });
  test("a spot mark that is right takes the digit out of the rest of its house", async () => {
    const spots = [{ digit: 4, house: "main/column/2", cells: ["r2c2", "r3c2"] }];
    const found = await answer("r4c2", "4", "--board", board("spots.json", { spots }));
    expect(found.answer).toBe("cannot");
    expect(found.steps).toHaveLength(1);
  });
  test("where there are several solutions the board is taken as it stands, but for entries that clash", async () => {
    const path = join(folder, "several.json");
    const puzzle = fingerprint(accept(read(readFileSync(several, "utf8")))!);
    writeFileSync(path, JSON.stringify({ board: 1, puzzle, settled: { r2c3: 2, r4c4: 3, r4c1: 3 } }));
    const { out } = await asked(["why", several, "r2c4", "2", "--board", path, "--json"]);
    const found = JSON.parse(out);
    expect(found).toMatchObject({ answer: "cannot", wrong: ["r4c4", "r4c1"] });
    expect(found.steps[0].because.facts).toEqual({ r2c3: [2] });
    expect(found.say).toMatch(/^This puzzle does not have exactly one solution/);
  });
  test("two boards at once are refused", async () => {
    const path = board("two.json", { settled: {} });
    const { code, err } = await asked(["why", one, "r1c3", "1", "--at", "1", "--board", path]);
    expect({ code, err }).toEqual({
      code: 2,
      err: "--at and --board each name a board to ask from. Give one of them.\n",
    });
  });
  test("a beat that is none is refused, saying which there are", async () =>
    expect((await asked(["why", one, "r1c3", "1", "--at", "99"])).err).toMatch(
      /beat of the running order, \d+ to \d+/,
    ));
  test("the reason is drawn", async () => {
    const picture = join(folder, "reason.svg");
    await asked(["why", one, "r2c4", "2", "--picture", picture]);
    expect(readFileSync(picture, "utf8")).toMatch(/^<svg/);
  });
});
