import { element, escaped } from "../svg/element.ts";
import { type Colour, type Theme, themes } from "../tokens.ts";

/** A page that stands alone: no network, no scripts, light or dark as the reader's device has it, light on paper. */
export interface HtmlDocument {
  readonly title: string;
  /** CSS of this page, after what all have. */
  readonly css: string;
  /** CSS that brings the face. */
  readonly fontCss?: string;
  /** What stands in `main`, already written. */
  readonly body: string;
}

const variablesOf = (theme: Theme): string =>
  (Object.keys(themes[theme]) as Colour[]).map((name) => `--${name}:${themes[theme][name]}`).join(";");

const shared = `
:root{${variablesOf("light")};color-scheme:light dark}
@media screen and (prefers-color-scheme:dark){:root{${variablesOf("dark")}}}
*{box-sizing:border-box}
body{margin:0;background:var(--page);color:var(--ink);font:500 18px/1.5 "Besley Variable",Besley,Georgia,serif;font-feature-settings:"lnum";overflow-wrap:anywhere}
main{max-width:64rem;margin:0 auto;padding:24px 24px 64px}
h1{font-size:38px;line-height:1.2;font-weight:640;margin:18px 0 8px}
h2{font-size:27px;line-height:1.25;font-weight:600;margin:44px 0 12px}
h3{font-size:18px;font-weight:600;margin:24px 0 8px}
p{margin:0 0 12px}
a{color:var(--because-text);text-underline-offset:.15em}
:focus-visible{outline:2.5px solid var(--focus);outline-offset:2px}
.quiet{color:var(--ink-2);font-size:15.5px}
.because{text-decoration:underline;text-decoration-color:var(--because);text-decoration-thickness:2px;text-underline-offset:.2em}
.so{font-weight:680;text-decoration:underline;text-decoration-color:var(--so);text-decoration-thickness:3px;text-underline-offset:.2em}
@media (max-width:40rem){main{padding:16px 16px 44px}h1{font-size:27px}h2{font-size:22.5px}}
@media print{body{background:#fff;font-size:12pt}main{max-width:none;padding:0}h1{font-size:22pt}h2{font-size:16pt;break-after:avoid}a{color:inherit}}
@page{margin:16mm}
`;

/** Nothing of such a page is fetched or run, whatever its texts say. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:";

const inStyle = (css: string): string => css.replaceAll("</", "<\\/");

export const htmlDocument = ({ title, css, fontCss = "", body }: HtmlDocument): string =>
  `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy}">
${element("title", {}, escaped(title))}
<style>${inStyle(fontCss)}${inStyle(shared)}${inStyle(css)}</style>
</head>
<body>
<main>
${body}
</main>
</body>
</html>
`;
