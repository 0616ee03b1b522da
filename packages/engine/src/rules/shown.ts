/** A value much as the file has it: `{ cells: r1c1 r1c2, sum: 3 }`. */
const flow = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(flow).join(", ")}]`;
  if (value === null) return "nothing";
  if (typeof value !== "object") return String(value);
  const parts = Object.entries(value).map(([key, part]) => `${key}: ${flow(part)}`);
  return parts.length === 0 ? "{}" : `{ ${parts.join(", ")} }`;
};

/** How a value that was read is shown in a message: short, on one line. */
export const shown = (value: unknown): string => {
  const line = flow(value).replace(/\s+/g, " ").trim();
  return line.length > 40 ? `${line.slice(0, 39)}…` : line;
};
