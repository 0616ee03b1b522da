/** Drawing and text for what goes out with a show. Runs in a browser: no Node, no DOM. */
export { type BoardOptions, boardScene, boardSvg } from "./board/board-svg.ts";
export type { View } from "./board/picture.ts";
export type { Subject } from "./board/subject.ts";
export type { Written } from "./board/written.ts";
export { type Colours, coloursOf, type Paint, variables } from "./colours.ts";
export { deliverables } from "./deliverables/registry.ts";
export type { Assets, Deliverable, Show } from "./deliverables/show.ts";
export { clock } from "./deliverables/times.ts";
export type { Extent } from "./scene/extent.ts";
export type { Figure } from "./scene/figure.ts";
export { type Scene, sceneOf } from "./scene/scene.ts";
export { type LetteredReason, lettersOf } from "./step/letters.ts";
export { type SvgOptions, svgOf } from "./svg/svg.ts";
export { type Colour, cssVariables, faces, type Theme, themes, tintShares, units } from "./tokens.ts";
