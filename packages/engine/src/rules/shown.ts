/** How a value that was read is shown in a message: short, on one line. */
export const shown = (value: unknown): string => {
  const text = typeof value === "object" ? JSON.stringify(value) : String(value);
  const line = text.replace(/\s+/g, " ").trim();
  return line.length > 40 ? `${line.slice(0, 39)}…` : line;
};
