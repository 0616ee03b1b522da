/** Texts of the engine have typewriter apostrophes; what is read here has the printer's. */
export const curly = (text: string): string => text.replaceAll("'", "’");
