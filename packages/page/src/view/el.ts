type Props = Readonly<Record<string, string | number | boolean | undefined | ((event: Event) => void)>>;
export type Child = Node | string | undefined;

/** An element with attributes (`onclick` and its like are listeners, false and undefined are left out) and children. */
export const el = <K extends keyof HTMLElementTagNameMap>(
  tag: K,
  props: Props = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] => {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(props)) {
    if (typeof value === "function") element.addEventListener(name.slice(2), value);
    else if (value !== undefined && value !== false) element.setAttribute(name, value === true ? "" : String(value));
  }
  element.append(...children.filter((child) => child !== undefined));
  return element;
};

/** Sets attributes; those that are undefined are taken off. */
export const withAttributes = (element: Element, attributes: Readonly<Record<string, string | undefined>>): void => {
  for (const [name, value] of Object.entries(attributes))
    if (value === undefined) element.removeAttribute(name);
    else if (element.getAttribute(name) !== value) element.setAttribute(name, value);
};

/** An SVG from text that our own drawing code wrote. */
export const drawing = (svg: string, className: string): HTMLElement => {
  const box = el("div", { class: className, "aria-hidden": "true" });
  box.innerHTML = svg;
  return box;
};

const focusedIn = (container: HTMLElement): string | undefined => {
  const { activeElement } = document;
  if (!(activeElement instanceof HTMLElement) || !container.contains(activeElement)) return undefined;
  return activeElement.dataset.focus ?? "";
};

/** Puts other children in, and the focus back on what it was on, or on what may take it instead. */
export const refill = (container: HTMLElement, ...children: readonly Child[]): void => {
  const focus = focusedIn(container);
  container.replaceChildren(...children.filter((child) => child !== undefined));
  if (focus === undefined) return;
  const same = focus && container.querySelector<HTMLElement>(`[data-focus="${CSS.escape(focus)}"]`);
  (same || container.querySelector<HTMLElement>("[tabindex='-1'], button"))?.focus({ preventScroll: true });
};
