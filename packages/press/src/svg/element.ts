const escapes: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (letter) => escapes[letter]!);

export type Attributes = Readonly<Record<string, string | undefined>>;

const written = (attributes: Attributes): string =>
  Object.entries(attributes)
    .map(([name, value]) => (value === undefined ? "" : ` ${name}="${escaped(value)}"`))
    .join("");

/** An element with what is in it, already written. */
export const element = (name: string, attributes: Attributes, content = ""): string =>
  content === "" ? `<${name}${written(attributes)}/>` : `<${name}${written(attributes)}>${content}</${name}>`;
