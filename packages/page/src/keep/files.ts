import type { App } from "../app/app.ts";
import { withPosition } from "../app/commit.ts";
import { type State, saying } from "../app/state.ts";
import { boardFileOf, readBoardFile } from "./board-file.ts";

const slug = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "") || "board";

/** Hands the board over as a file. */
export const saveFile = (app: App): void => {
  const text = `${JSON.stringify(boardFileOf(app.state(), app.ground), null, 1)}\n`;
  const url = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = url;
  link.download = `${slug(app.ground.data.puzzle.title)}.board.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
};

const remarking = (state: State, remark: string): State => saying({ ...state, remark }, remark);

/** A board file takes the place of what stands; undo brings that back. What was done before comes along to an empty page. */
const takeFile = (app: App, text: string): void => {
  const found = readBoardFile(text, app.ground);
  if ("problem" in found) {
    app.update((state) => remarking(state, found.problem));
    return;
  }
  const { settled, marks, spots, entries = [], nudges = [] } = found.file;
  app.update((state, moment) => {
    const isFresh = state.log.length === 0;
    const next = withPosition(state, { settled, marks, spots }, "open", "", moment);
    const whole = isFresh ? { ...next, log: [...entries, ...next.log], asked: nudges } : next;
    return remarking(whole, "The board of the file is here now. Undo brings back what stood before.");
  });
};

/** Asks for a file; a board is at most this long. */
const most = 5_000_000;

export const openFile = (app: App): void => {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = ".json,application/json";
  input.addEventListener("change", async () => {
    const [file] = input.files ?? [];
    if (!file) return;
    takeFile(app, file.size > most ? "" : await file.text());
  });
  input.click();
};
