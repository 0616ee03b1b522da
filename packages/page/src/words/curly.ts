/** Texts of the engine have typewriter apostrophes; what is read here has the printer's, and a digit keeps its article. */
export const curly = (text: string): string => text.replaceAll("'", "’").replaceAll(/\b(an?) (?=\d)/g, "$1\u00a0");
