// The walls: imports go leftwards only, engine <- press <- page, shelf, cli, studio. Checked by scripts/walls.mjs.

/** Tests, and what a kind brings to them: its cases and its encoding for the outside oracle. */
const test = String.raw`\.(test|cases|oracle)\.ts$`;
const engine = "^packages/engine/src/";
const press = "^packages/press/src/";
const pressFiles = `${press}files/`;
const workspace = (names) => `^packages/(${names})/`;

/** Modules of `from` (tests left out) may not import `to`. */
const wall = (name, comment, from, to) => ({
  name,
  comment,
  severity: "error",
  from: { pathNot: test, ...from },
  to,
});

/** Inside the engine, `from` may not import `to`. Paths are under packages/engine/src. */
const inner = (name, comment, from, to) =>
  wall(name, comment, { path: `${engine}${from}` }, { path: `${engine}${to}` });

/** Which packages may not be imported by which. Held for tests too. */
const leftwards = [
  ["engine", "press|page|shelf|cli|studio"],
  ["press", "page|shelf|cli|studio"],
  ["page", "shelf|cli|studio"],
  ["shelf", "page|cli|studio"],
  ["cli", "page|studio"],
  ["studio", "page|cli"],
].map(([from, to]) => ({
  name: `leftwards-from-${from}`,
  comment: `${from} may import only what stands left of it: engine <- press <- page, shelf, cli, studio.`,
  severity: "error",
  from: { path: workspace(from) },
  to: { path: workspace(to) },
}));

const innerWalls = [
  wall(
    "prove-stands-alone",
    "The prover judges the rest, so it sees only puzzles, board data, a kind's contract and the types of a step.",
    { path: `${engine}prove/` },
    {
      path: engine,
      pathNot: [`${engine}(prove|puzzle|board)/`, `${engine}rules/contract\\.ts$`, `${engine}deduce/step\\.ts$`],
    },
  ),
  {
    name: "prove-sees-step-as-type",
    comment: "From deduce/step.ts the prover takes types only.",
    severity: "error",
    from: { path: `${engine}prove/`, pathNot: test },
    to: { path: `${engine}deduce/step\\.ts$`, dependencyTypesNot: ["type-only"] },
  },
  inner("techniques-know-no-kind", "Techniques work on houses and terms.", "deduce/techniques/", "rules/kinds/"),
  inner("search-without-deduce", "Search and reasoning are two witnesses.", "search/", "deduce/"),
  inner("deduce-without-search", "Search and reasoning are two witnesses.", "deduce/", "search/"),
  inner("telling-without-search", "What is told comes from steps, not from the search.", "(order|speech)/", "search/"),
];

const environments = [
  wall(
    "engine-is-pure",
    "The engine has no files, no clock, no Node.",
    { path: engine },
    { dependencyTypes: ["core"] },
  ),
  wall(
    "press-strings-run-anywhere",
    "Outside press/src/files no Node built-in is used, nor anything of files.",
    { path: press, pathNot: [test, pressFiles] },
    { dependencyTypes: ["core"] },
  ),
  wall(
    "press-strings-without-files",
    "The strings root must run in a browser.",
    { path: press, pathNot: [test, pressFiles] },
    { path: pressFiles },
  ),
  wall(
    "page-without-files",
    "The try-it page uses press's strings only.",
    { path: workspace("page") },
    { path: pressFiles },
  ),
  wall(
    "test-kit-in-tests-only",
    "The test kit serves tests.",
    { path: "^packages/", pathNot: [test, "^packages/engine/test-kit/"] },
    { path: "^packages/engine/test-kit/" },
  ),
];

const hygiene = [
  {
    name: "no-cycles",
    comment: "Modules that need each other at run time are one module; types may go round.",
    severity: "error",
    from: {},
    to: { circular: true, dependencyTypesNot: ["type-only"], viaOnly: { dependencyTypesNot: ["type-only"] } },
  },
  {
    name: "all-resolved",
    comment: "An import that is not resolved is seen by no wall.",
    severity: "error",
    from: { path: "^packages/" },
    to: { couldNotResolve: true },
  },
];

export default {
  forbidden: [...leftwards, ...innerWalls, ...environments, ...hygiene],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)(dist|out|coverage)/" },
    tsPreCompilationDeps: "specify",
    tsConfig: { fileName: "tsconfig.base.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["source", "import", "node", "default"],
      extensions: [".ts", ".tsx", ".mjs", ".js", ".json"],
    },
  },
};
