import type { Part } from "@solvewright/engine";
import { htmlDocument } from "../../html/document.ts";
import { creditHtml } from "../../html/linked.ts";
import { element, escaped } from "../../svg/element.ts";
import type { Deliverable } from "../show.ts";
import { oneLine } from "../texts.ts";
import { lengthOf, type ToldAct, type ToldBeat, toldActs } from "./told-acts.ts";

const css = `
table{width:100%;border-collapse:collapse}
th{text-align:left;font-weight:600}
thead th{font-size:15.5px;color:var(--ink-2);padding:0 0 8px;border-bottom:1.5px solid var(--ink)}
td,tbody th{vertical-align:top;padding:18px 0;border-bottom:1px solid var(--rule)}
td.line{text-wrap:pretty;font-size:22.5px;line-height:1.36;padding-right:34px;width:64%}
td.line .name{display:block;font-size:15.5px;color:var(--ink-2);margin-bottom:4px}
td.line .pause{display:block;font-style:italic;margin-bottom:4px}
td ul{margin:0;padding:0;list-style:none}
td li{margin-bottom:8px}
td b{font-weight:680}
.said{font-size:22.5px;line-height:1.36;max-width:44rem}
@media (max-width:40rem){table,tbody,tr,td{display:block;width:auto}thead{position:absolute;clip-path:inset(50%)}td.line{width:auto;border:0;padding:18px 0 8px}td.do{padding-top:0}}
@media print{td.line,.said{font-size:15pt}td li{font-size:12pt}tr{break-inside:avoid}thead{display:table-header-group}td,tbody th{padding:8pt 0}}
`;

const spoken = (parts: readonly Part[]): string =>
  parts
    .map(({ text, role }) => {
      if (role === "plain") return escaped(text);
      const [, before, words] = /^(\s*)(.*)$/su.exec(text)!;
      return `${before}<span class="${role}">${escaped(words!)}</span>`;
    })
    .join("");

const item = (verb: string, text: string): string => `<li><b>${verb}</b> ${escaped(text)}</li>`;

const doing = ({ entries: { grid, enter, mark } }: ToldBeat): string => {
  const where = grid ? [`<li>In ${escaped(grid)}</li>`] : [];
  const items = [...where, ...enter.map((text) => item("Enter", text)), ...mark.map((text) => item("Mark", text))];
  return items.length > 0 ? `<ul>${items.join("")}</ul>` : "";
};

const rowOf = (beat: ToldBeat): string => {
  const { n, name, at, seconds, pause, parts } = beat;
  const about = `<span class="name">${n}. ${escaped(oneLine(name))} · ${at}, ${seconds} s</span>`;
  const first = pause ? `<span class="pause">${escaped(pause)}</span>` : "";
  return `<tr><td class="line">${about}${first}${spoken(parts)}</td><td class="do">${doing(beat)}</td></tr>`;
};

const said = (text: string | undefined): string => (text ? `<p class="said">${escaped(text)}</p>` : "");

const actHtml = ({ title, open, close, beats }: ToldAct, k: number): string => {
  const rows = beats.map(rowOf).join("\n");
  return `<section aria-labelledby="act-${k}">
<h2 id="act-${k}">${escaped(oneLine(title))}</h2>
${said(open)}
<table aria-labelledby="act-${k}">
<thead><tr><th scope="col">The line</th><th scope="col">What to enter and mark</th></tr></thead>
<tbody>
${rows}
</tbody>
</table>
${said(close)}
</section>`;
};

/** The script as a page in large type: the line on the left, what to enter and mark on the right. */
export const scriptHtml: Deliverable = {
  name: "script.html",
  purpose: "The script in large type, to read from a screen or to print: the line, and what to enter and mark.",
  needs: [],
  make: (show, { fontCss }) => {
    const { puzzle } = show.board;
    const title = oneLine(puzzle.title) || "Untitled";
    return htmlDocument({
      title: `${title}: the script`,
      css,
      ...(fontCss ? { fontCss } : {}),
      body: [
        element("h1", { dir: "auto" }, `${escaped(title)}: the script`),
        `<p>${creditHtml(puzzle, show.isChanged)} ${lengthOf(show)}</p>`,
        `<p class="quiet">What a line leans on is underlined; <span class="so">what follows from it</span> is bold. Places are named row and column, each grid counting its own from the top left.</p>`,
        ...toldActs(show).map(actHtml),
      ].join("\n"),
    });
  },
};
