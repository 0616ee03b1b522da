/** A text in one line. */
export const oneLine = (text: string): string => text.trim().replace(/\s+/g, " ");

/** A text as Markdown shows it letter by letter, in one line: no sign in it is taken for markup. */
export const inMarkdown = (text: string): string =>
  oneLine(text)
    .replace(/[\\`*_[\]<>&#|~]/g, "\\$&")
    .replace(/^([-+=]|\d+(?=[.)]))/, (start) => (/\d/.test(start) ? `${start}\\` : `\\${start}`));

/** Marks that turn the direction of letters round reach past the text that holds them, so they are left out. */
export const withoutTurns = (text: string): string => text.replace(/[\u202a-\u202e\u2066-\u2069]/g, "");
