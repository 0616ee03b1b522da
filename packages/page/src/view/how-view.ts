import type { Ground } from "../solve/ground.ts";
import { shapeSaid } from "../words/spot-words.ts";
import { type Child, el } from "./el.ts";

const key = (name: string): HTMLElement => el("kbd", {}, name);

const byKeys = (ground: Ground): readonly Child[] => {
  const box = shapeSaid(ground, "region");
  const several = ground.data.puzzle.grids.length > 1;
  return [
    "Choose cells and type: digits are marks. ",
    key("Enter"),
    " settles a cell that holds one mark. ",
    ...(ground.isLong ? [key("Space"), " ends a number. "] : []),
    key("R"),
    ", ",
    key("C"),
    " or ",
    key("B"),
    ` and a digit: where its row, column or ${box} can hold it${several ? "; the letter again for the other grid" : ""}. `,
    key("Shift"),
    " and the arrows choose several. ",
    ...(several ? [key("G"), " and a number looks at one grid alone. "] : []),
    key("N"),
    " a nudge, ",
    key("W"),
    " why not, ",
    key("K"),
    " a check, ",
    key("Ctrl"),
    " ",
    key("Z"),
    " undo.",
  ];
};

/** How digits are entered, with keys and by touch. */
export const howElement = (ground: Ground): HTMLElement =>
  el(
    "section",
    { class: "how", "aria-labelledby": "how-title" },
    el("h2", { id: "how-title", class: "heard" }, "How to enter"),
    el("p", { id: "how-keys", class: "by-keys" }, ...byKeys(ground)),
    el(
      "p",
      { class: "by-touch" },
      "Tap a cell, or drag over several, then tap digits: they are marks. When a cell is down to one, settle it. Row, column and ",
      shapeSaid(ground, "region"),
      " say where a digit can go. Two fingers zoom.",
    ),
  );
