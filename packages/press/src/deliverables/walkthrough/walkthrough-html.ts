import type { PlanAct } from "@solvewright/engine";
import { boardSvg } from "../../board/board-svg.ts";
import { htmlDocument } from "../../html/document.ts";
import { creditHtml } from "../../html/linked.ts";
import { element, escaped } from "../../svg/element.ts";
import { beatSvg } from "../beat-picture.ts";
import { entriesOf, entriesSaid } from "../entries.ts";
import { puzzleInWords } from "../puzzle-in-words.ts";
import { rulesNumbered } from "../rules-in-full.ts";
import { reasonsOf } from "../script/told-acts.ts";
import type { Deliverable, Show } from "../show.ts";
import { type StagedBeat, stagedBeats } from "../standing.ts";
import { oneLine } from "../texts.ts";
import { picturedBeats } from "./pictured.ts";
import { typedGrids } from "./typed-grid.ts";

const css = `
main{max-width:46rem}
ol.beats{list-style:none;margin:0;padding:0}
ol.beats>li{margin:0 0 18px;padding-left:3.2rem;position:relative}
.n{position:absolute;left:0;font-weight:640;color:var(--ink-2)}
.do{font-size:15.5px;color:var(--ink-2);margin-top:-8px}
ul{padding-left:1.4rem}
li{margin-bottom:4px}
figure{margin:8px 0 24px;max-width:34rem}
figure svg{display:block;width:100%;height:auto;max-height:90vh}
figcaption{font-size:15.5px;color:var(--ink-2);margin-top:8px}
summary{cursor:pointer;font-size:15.5px;padding:8px 0;min-height:24px}
.grids{display:flex;flex-wrap:wrap;gap:24px;padding:8px 0 18px}
table.grid{border-collapse:collapse;font-size:15.5px}
table.grid caption{text-align:left;margin-bottom:4px}
table.grid th{font-weight:500;color:var(--ink-3)}
table.grid td,table.grid th{min-width:1.9rem;height:1.9rem;text-align:center;padding:0}
table.grid tbody td{border:1px solid var(--hair);background:var(--sheet)}
.blank{position:absolute;clip-path:inset(50%);width:1px;height:1px;overflow:hidden}
nav ul{list-style:none;padding:0}
@media print{figure,ol.beats>li>p{break-inside:avoid}p+figure{break-before:avoid}details,nav{display:none}figure svg{max-height:9cm;width:auto;max-width:100%}ol.beats>li{margin-bottom:8pt}}
`;

const list = (texts: readonly string[]): string =>
  `<ul>${texts.map((text) => `<li>${escaped(text)}</li>`).join("\n")}</ul>`;

const paragraph = (text: string): string => (text === "" ? "" : `<p>${escaped(text)}</p>`);

const figure = (svg: string, caption: string): string =>
  `<figure>${svg}${element("figcaption", {}, escaped(caption))}</figure>`;

const doing = (show: Show, { beat }: StagedBeat): string => {
  const texts = entriesSaid(entriesOf(show, beat));
  return texts.length > 0 ? `<p class="do">${escaped(texts.join(" "))}</p>` : "";
};

const captionOf = ({ board }: Show, { beat }: StagedBeat): string => {
  const reasons = reasonsOf(beat.parts, board).map(({ letter, name }) => `${letter}, ${name}`);
  return `Beat ${beat.n} in the picture${reasons.length > 0 ? `: ${reasons.join("; ")}` : ""}. Framed is what follows.`;
};

const picture = (show: Show, staged: StagedBeat): string =>
  figure(
    beatSvg(show, staged, {
      theme: "variables",
      id: `beat-${staged.beat.n}`,
      label: `The board at beat ${staged.beat.n}`,
    }),
    captionOf(show, staged),
  );

const beatHtml = (show: Show, staged: StagedBeat, isPictured: boolean): string => {
  const { n, placed } = staged.beat;
  const text = `<p><span class="n">${n}.</span> ${escaped(placed)}</p>`;
  return `<li id="beat-${n}">${text}${doing(show, staged)}${isPictured ? picture(show, staged) : ""}</li>`;
};

const actHtml = (
  show: Show,
  { title, close }: PlanAct,
  k: number,
  beats: readonly StagedBeat[],
  pictured: ReadonlySet<number>,
): string => {
  const here = beats.filter(({ act }) => act === k);
  const last = here.at(-1);
  const grids = last ? typedGrids(show.board, last.after.settled, `after beat ${last.beat.n}`) : "";
  return `<section aria-labelledby="act-${k}">
<h2 id="act-${k}">${escaped(oneLine(title))}</h2>
<ol class="beats">
${here.map((staged) => beatHtml(show, staged, pictured.has(staged.beat.n))).join("\n")}
</ol>
${paragraph(close)}
<details><summary>Every cell as it stands now, row by row</summary>${grids}</details>
</section>`;
};

const puzzleHtml = (show: Show): string => {
  const { board } = show;
  const svg = boardSvg(board, { theme: "variables", id: "puzzle", sentences: false });
  return `<section aria-labelledby="puzzle">
<h2 id="puzzle">The puzzle</h2>
<p>Rows count from the top and columns from the left, in each grid by itself. All that is drawn is said here, so that you can set it out on a tactile grid or type it.</p>
${list(puzzleInWords(board))}
<details><summary>Every cell as it stands at the start, row by row</summary>${typedGrids(board, {}, "at the start")}</details>
${figure(svg, "The puzzle as it is drawn.")}
<h2 id="rules">The rules</h2>
${rulesHtml(show)}
</section>`;
};

/** Numbered with the beats, as in the script. */
const rulesHtml = ({ board, plan }: Show): string => {
  const items = rulesNumbered({ board, plan }).map(
    ({ n, say }) => `<li><p><span class="n">${n}.</span> ${escaped(say)}</p></li>`,
  );
  return `<ol class="beats">${items.join("\n")}</ol>`;
};

const contents = (show: Show): string => {
  const acts = show.plan.acts.map(({ title }, k) => `<li><a href="#act-${k}">${escaped(oneLine(title))}</a></li>`);
  return `<nav aria-label="Parts"><ul><li><a href="#puzzle">The puzzle</a></li><li><a href="#rules">The rules</a></li>${acts.join("")}</ul></nav>`;
};

/** The puzzle and its whole solve in words that need no picture, and pictures for those who want them. */
export const walkthroughHtml: Deliverable = {
  name: "walkthrough.html",
  purpose: "The walkthrough as a page, with a picture every few beats that nobody needs to follow it.",
  needs: ["credit", "link", "consent"],
  make: (show, { fontCss }) => {
    const { board, plan } = show;
    const title = oneLine(board.puzzle.title) || "Untitled";
    const beats = stagedBeats(show);
    const pictured = picturedBeats(beats);
    return htmlDocument({
      title: `${title}: the walkthrough`,
      css,
      ...(fontCss ? { fontCss } : {}),
      body: [
        element("h1", { dir: "auto" }, `${escaped(title)}: the walkthrough`),
        `<p>${creditHtml(board.puzzle, show.isChanged)}</p>`,
        contents(show),
        puzzleHtml(show),
        ...plan.acts.map((act, k) => actHtml(show, act, k, beats, pictured)),
      ].join("\n"),
    });
  },
};
