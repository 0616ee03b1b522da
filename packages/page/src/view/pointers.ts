import type { Extent } from "@solvewright/press";
import type { App } from "../app/app.ts";
import { dragging, touching } from "../app/move-actions.ts";

type Spot = { readonly x: number; readonly y: number };

const spotOf = ({ clientX, clientY }: PointerEvent): Spot => ({ x: clientX, y: clientY });

/** The cell under a point of the screen. */
const cellUnder = (
  app: App,
  board: HTMLElement,
  { left, top, right, bottom }: Extent,
  { x, y }: Spot,
): string | undefined => {
  const box = board.getBoundingClientRect();
  const column = Math.ceil(((x - box.left) / box.width) * (right - left) + left);
  const row = Math.ceil(((y - box.top) / box.height) * (bottom - top) + top);
  const name = `r${row}c${column}`;
  return app.ground.cells.has(name) ? name : undefined;
};

const howOf = ({ shiftKey, ctrlKey, metaKey }: PointerEvent): "alone" | "also" | "through" =>
  shiftKey ? "through" : ctrlKey || metaKey ? "also" : "alone";

const mostZoom = 4;

/** Two fingers: as far apart as they are now, compared with when they came. */
const pinch = (app: App, frame: HTMLElement, fingers: ReadonlyMap<number, Spot>) => {
  const [a, b] = [...fingers.values()] as [Spot, Spot];
  const apart = Math.max(1, Math.hypot(a.x - b.x, a.y - b.y));
  const { zoom } = app.state();
  const box = frame.getBoundingClientRect();
  const at = { x: (a.x + b.x) / 2 - box.left, y: (a.y + b.y) / 2 - box.top };
  const under = { x: frame.scrollLeft + at.x, y: frame.scrollTop + at.y };
  return (): void => {
    const [c, d] = [...fingers.values()] as [Spot, Spot];
    const next = Math.min(mostZoom, Math.max(1, (zoom * Math.hypot(c.x - d.x, c.y - d.y)) / apart));
    const now = { x: (c.x + d.x) / 2 - box.left, y: (c.y + d.y) / 2 - box.top };
    app.update((state) => ({ ...state, zoom: next }));
    frame.scrollTo((under.x * next) / zoom - now.x, (under.y * next) / zoom - now.y);
  };
};

/** Choosing by mouse, pen and finger: a tap, a drag over several cells, two fingers to zoom, one to pan what is zoomed. */
export const listenForPointers = (app: App, board: HTMLElement, extent: Extent): void => {
  const fingers = new Map<number, Spot>();
  let moved: (() => void) | undefined;
  let last: Spot | undefined;
  let isPanning = false;
  const frame = (): HTMLElement => board.parentElement!;
  const cellAt = (spot: Spot): string | undefined => cellUnder(app, board, extent, spot);

  const pan = (spot: Spot): void => {
    if (last) frame().scrollBy(last.x - spot.x, last.y - spot.y);
    last = spot;
  };
  const drag = (event: PointerEvent): void => {
    const cells = [...(event.getCoalescedEvents?.() ?? []), event].map((each) => cellAt(spotOf(each)));
    for (const cell of new Set(cells))
      if (cell && cell !== app.state().at) app.update((state) => dragging(state, cell));
  };

  board.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    fingers.set(event.pointerId, spotOf(event));
    if (fingers.size === 2) {
      moved = pinch(app, frame(), fingers);
      return;
    }
    const cell = cellAt(spotOf(event));
    last = spotOf(event);
    isPanning = event.pointerType === "touch" && app.state().zoom > 1 && !app.state().several;
    if (!cell) return;
    event.preventDefault();
    board.setPointerCapture(event.pointerId);
    app.update((state, moment) => touching(state, cell, howOf(event), moment));
    board.querySelector<HTMLElement>(`[data-cell="${app.state().at}"]`)?.focus({ preventScroll: true });
  });
  board.addEventListener("pointermove", (event) => {
    if (!fingers.has(event.pointerId)) return;
    fingers.set(event.pointerId, spotOf(event));
    if (moved) moved();
    else if (isPanning) pan(spotOf(event));
    else drag(event);
  });
  for (const end of ["pointerup", "pointercancel"] as const)
    board.addEventListener(end, (event) => {
      fingers.delete(event.pointerId);
      // A finger that stays after two were down goes on panning, lest it chooses cells.
      [moved, last, isPanning] = [undefined, undefined, fingers.size > 0];
    });
};
