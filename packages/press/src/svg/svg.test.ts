import { expect, test } from "vitest";
import { coloursOf, variables } from "../colours.ts";
import type { Figure } from "../scene/figure.ts";
import { sceneOf } from "../scene/scene.ts";
import { type SvgOptions, svgOf } from "./svg.ts";

const options: SvgOptions = {
  extent: { left: 0, top: 0, right: 2, bottom: 1 },
  colours: coloursOf("light"),
  label: "Two cells",
};
const line: Figure = {
  shape: "paths",
  layer: "line",
  paths: [
    {
      points: [
        [0.5, 0.5],
        [1.5, 0.5],
      ],
    },
  ],
  pen: { paint: "ink", width: 0.07 },
};
const text: Figure = {
  shape: "text",
  layer: "digit",
  at: [0.5, 0.73],
  text: "5",
  size: 0.62,
  fill: "pencil",
  weight: 480,
};

test("layers are written in the order of drawing, whatever the order of the figures", () => {
  const svg = svgOf(sceneOf([text, line, { ...line, layer: "sheet" }]), options);
  expect([...svg.matchAll(/data-layer="(\w+)"/g)].map((match) => match[1])).toEqual(["sheet", "line", "digit"]);
});

test("one cell is a hundred units, and figures have at most three decimals", () => {
  const svg = svgOf(
    sceneOf([
      {
        ...line,
        paths: [
          {
            points: [
              [1 / 3, 0],
              [1, 2 / 3],
            ],
          },
        ],
      },
    ]),
    options,
  );
  expect(svg).toContain('viewBox="0 0 200 100"');
  expect(svg).toContain('d="M33.333 0L100 66.667"');
});

test("corners are softened by no more than half of a piece", () => {
  const bent: Figure = {
    ...line,
    paths: [
      {
        points: [
          [0, 0],
          [1, 0],
          [1, 0.1],
        ],
        round: 0.2,
      },
    ],
  };
  expect(svgOf(sceneOf([bent]), options)).toContain('d="M0 0L80 0Q100 0 100 5L100 10"');
});

test("words are escaped wherever they stand", () => {
  const svg = svgOf(sceneOf([{ ...text, text: "<&>" }]), { ...options, label: 'A "label"' });
  expect(svg).toContain(">&lt;&amp;&gt;</text>");
  expect(svg).toContain('aria-label="A &quot;label&quot;"');
});

test("on a page colours are variables", () => {
  expect(svgOf(sceneOf([text]), { ...options, colours: variables })).toContain('fill="var(--pencil)"');
});

test("a halo lies under its own text", () => {
  const svg = svgOf(sceneOf([{ ...text, halo: { paint: "sheet", width: 0.05 } }]), options);
  const [halo, own] = [...svg.matchAll(/<text[^>]*>/g)].map((match) => match[0]);
  expect(halo).toContain('stroke="#FFFFFF" stroke-width="10"');
  expect(own).not.toContain("stroke");
});

test("letters that the font lacks are drawn, the rest is set beside them", () => {
  const svg = svgOf(sceneOf([{ ...text, text: "Σ13", anchor: "start" }]), options);
  expect(svg).toMatch(/<path d="M[^"]*Z"[^>]*\/><text x="94\.64"[^>]*>13<\/text>/);
});

test("two pictures on one page do not share ids", () => {
  const hatch: Figure = { ...line, layer: "hatch", fill: { pattern: "hatch" } };
  const rim: Figure = { shape: "rim", layer: "ring", round: [line], inner: 0.1, outer: 0.16, fill: "rule-use" };
  const ids = (id: string) =>
    [...svgOf(sceneOf([hatch, rim, rim]), { ...options, id }).matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
  const both = [...ids("left"), ...ids("right")];
  expect(both).toHaveLength(6);
  expect(new Set(both).size).toBe(6);
});

test("static fonts are asked for by the family of each weight", () => {
  const svg = svgOf(sceneOf([text, { ...text, weight: 800 }, { ...text, face: "desk", weight: 700 }]), {
    ...options,
    setting: "static",
  });
  expect([...svg.matchAll(/<text[^>]*font-family="([^"]+)"/g)].map((match) => match[1])).toEqual([
    "Besley Medium",
    "Besley ExtraBold",
    "Commissioner",
  ]);
});
