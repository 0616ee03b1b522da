import { capital } from "@solvewright/engine";
import { coloursOf } from "../../colours.ts";
import { beside, heightOf, paragraph, type Row, ruled, space, stacked } from "../../paper/block.ts";
import { columnsOf } from "../../paper/columns.ts";
import { pageSvg } from "../../paper/page-svg.ts";
import { either, margin } from "../../paper/paper.ts";
import { runWidth, type Style } from "../../paper/typeset.ts";
import { element } from "../../svg/element.ts";
import { heading, styles } from "../sheet/styles.ts";
import type { Show } from "../show.ts";
import { oneLine } from "../texts.ts";
import { type LetteredName, type ToldAct, type ToldBeat, toldActs } from "./told-acts.ts";

/** Cards on a page, and what stays free inside each. */
const [across, down, inset] = [2, 3, 14] as const;
const card = { width: (either.width - margin) / across, height: (either.height - margin) / down };
const inner = { width: card.width - 2 * inset, height: card.height - 2 * inset };

const cue: Style = { face: "voice", weight: 500, size: 11.5, fill: "ink" };
const follows: Style = { ...cue, weight: 700, fill: "so-text" };
const quiet: Style = { ...styles.foot, size: 9, fill: "ink-2" };
const place: Style = { ...styles.text, size: 10 };

const badgeWidth = 18;

/** The letter of a reason in its ring, a rule's in a blunt square. */
const badge = ({ letter, isRule }: LetteredName): Row => {
  const size = 13;
  const [ink, text] = isRule ? (["rule-use", "rule-use-text"] as const) : (["because", "because-text"] as const);
  const style: Style = { ...styles.strong, size: 8.5, fill: text };
  const run = { text: letter, style };
  const draw = (x: number, y: number): string =>
    [
      element("rect", {
        x: String(x),
        y: String(y + 1),
        width: String(size),
        height: String(size),
        rx: isRule ? "3" : String(size / 2),
        stroke: coloursOf("light")(ink),
        "stroke-width": "1.2",
      }),
      stacked(paragraph([run], size + 2, 1), x + (size - runWidth(run)) / 2, y + 3.6),
    ].join("\n");
  return { height: size + 2, draw };
};

const reasonRow = (reason: LetteredName): Row =>
  beside([
    { x: 0, rows: [badge(reason)] },
    {
      x: badgeWidth,
      rows: [...paragraph([{ text: capital(reason.name), style: cue }], inner.width - badgeWidth, 1.28), space(2)],
    },
  ]);

/** What follows, where no digit says it. */
const soRows = ({ entries: { enter }, parts }: ToldBeat): Row[] => {
  const said = parts.filter(({ role }) => role === "so").map(({ text }) => text.trim());
  return enter.length > 0 || said.length === 0
    ? []
    : paragraph([{ text: capital(said.join("; ")), style: follows }], inner.width, 1.3);
};

const entryRow = (text: string): Row[] => {
  const [, first, rest] = /^(\S+) ?(.*)$/su.exec(text)!;
  const runs = [
    { text: first!, style: { ...heading(13), fill: "ink" as const } },
    { text: rest!, style: place, before: 2 },
  ];
  return paragraph(runs, inner.width, 1.25);
};

const entryRows = ({ entries: { grid, enter, mark } }: ToldBeat): Row[] => [
  ...(grid ? paragraph([{ text: `In ${grid}`, style: place }], inner.width, 1.4) : []),
  ...[...enter, ...mark.map((text) => `mark ${text}`)].flatMap(entryRow),
];

const rowsOf = ({ title }: ToldAct, beat: ToldBeat): Row[] => {
  const { n, name, at, pause, parts, reasons } = beat;
  const isRule = parts.every(({ role }) => role === "plain");
  return [
    ...paragraph([{ text: `${n} · ${at} · ${oneLine(title)}`, style: quiet }], inner.width, 1.4),
    ...paragraph([{ text: oneLine(name), style: heading(15, 600) }], inner.width, 1.25),
    ruled(inner.width, 4, 4),
    ...(pause ? paragraph([{ text: pause, style: { ...cue, fill: "ink-2" } }], inner.width, 1.4) : []),
    ...(isRule ? paragraph([{ text: parts.map(({ text }) => text).join(""), style: cue }], inner.width, 1.3) : []),
    ...reasons.map(reasonRow),
    space(4),
    ...soRows(beat),
    ...entryRows(beat),
  ];
};

/** Rows that a card holds; what is more goes on to the next card, which says so. */
const cardsOf = (act: ToldAct): Row[][] =>
  act.beats.flatMap((beat) => {
    const goesOn = paragraph([{ text: `${beat.n} goes on`, style: quiet }], inner.width, 1.4);
    const columns = columnsOf(rowsOf(act, beat), [inner.height, inner.height - heightOf(goesOn)]);
    return columns.map((rows, k) => (k === 0 ? rows : [...goesOn, ...rows]));
  });

const cutLines = (): string => {
  const [left, top] = [margin / 2, margin / 2];
  const stroke = { stroke: coloursOf("light")("hair"), "stroke-width": "0.5", "stroke-dasharray": "3 3" };
  const upright = Array.from(
    { length: across + 1 },
    (_, k) => `M${left + k * card.width} ${top}v${down * card.height}`,
  );
  const level = Array.from({ length: down + 1 }, (_, k) => `M${left} ${top + k * card.height}h${across * card.width}`);
  return element("path", { d: [...upright, ...level].join(""), ...stroke });
};

/** Cards to cut out, one a beat, in order along the rows: its name, a cue a reason, the digits and where they go. */
export const cueCardPages = (show: Show): string[] => {
  const cards = toldActs(show).flatMap(cardsOf);
  const each = across * down;
  return Array.from({ length: Math.ceil(cards.length / each) }, (_, page) => {
    const here = cards.slice(page * each, (page + 1) * each);
    const drawn = here.map((rows, k) => {
      const [column, row] = [k % across, Math.floor(k / across)];
      return stacked(rows, margin / 2 + column * card.width + inset, margin / 2 + row * card.height + inset);
    });
    return pageSvg(either, [cutLines(), ...drawn]);
  });
};
