interface Around {
  readonly head: HTMLElement;
  readonly strip: HTMLElement;
  readonly side: HTMLElement;
}

/** Tells the page's style how much height stands above and below the board, so that on a phone the board stays in sight. */
export const keepRoom = (page: HTMLElement, { head, strip, side }: Around): void => {
  const measure = (): void => {
    const below = Math.max(strip.offsetHeight, page.dataset.panel === "rules" ? 0 : side.offsetHeight);
    page.style.setProperty("--taken", `${head.offsetHeight + below}px`);
  };
  const observer = new ResizeObserver(measure);
  for (const element of [head, strip, side]) observer.observe(element);
};
