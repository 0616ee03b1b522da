/** A text in lines of at most `width` characters, each beginning with the indent. */
export const wrapped = (text: string, width: number, indent: string): string[] => {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && longer.length <= width) lines[lines.length - 1] = longer;
    else lines.push(indent + word);
  }
  return lines;
};
