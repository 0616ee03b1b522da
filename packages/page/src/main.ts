/** The try-it page: solves one puzzle, which stands in the page as data. */
import type { PageData } from "@solvewright/press";
import { appFor } from "./app/app.ts";
import type { State } from "./app/state.ts";
import { clockOf } from "./clock.ts";
import { helperFor } from "./help/helper-client.ts";
import { openFile, saveFile } from "./keep/files.ts";
import { keepProgress } from "./keep/keeping.ts";
import { groundOf } from "./solve/ground.ts";
import { unpacked } from "./unpacked.ts";
import { pageView } from "./view/page-view.ts";

const textIn = (id: string): string => document.getElementById(id)!.textContent!;

const start = (data: PageData): void => {
  const clock = clockOf(document, () => performance.now());
  const app = appFor(groundOf(data), clock.now);

  const darkDevice = matchMedia("(prefers-color-scheme: dark)");
  const paint = ({ settings }: State): void => {
    const theme = settings.theme === "device" ? (darkDevice.matches ? "dark" : "light") : settings.theme;
    document.documentElement.dataset.theme = theme;
  };
  paint(app.state());
  app.watch(paint);
  darkDevice.addEventListener("change", () => paint(app.state()));

  const page = pageView(app, document.getElementById("page")!);

  const effects = {
    print: () => window.print(),
    save: () => saveFile(app),
    open: () => openFile(app),
    "to-board": page.board.focus,
    "to-panel": page.toPanel,
  };
  app.onEffect((effect) => effects[effect]());
  window.addEventListener("beforeprint", () => page.board.plain(true));
  window.addEventListener("afterprint", () => page.board.plain(false));
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && !event.defaultPrevented && app.state().panel) app.run("close");
  });

  void keepProgress(app, clock);
  helperFor(app, textIn("helper")).catch(() => app.update((state) => ({ ...state, helper: "gone" })));
};

const tooOld = "This browser is too old for this page: it can't unpack the puzzle.";

unpacked(textIn("puzzle")).then(
  (text) => start(JSON.parse(text) as PageData),
  () => document.getElementById("page")!.append(tooOld),
);
