/** What a part of a line speaks of; names as in the outside form of a step. */
export type About =
  | { readonly cells: readonly string[] }
  | { readonly house: string }
  | { readonly rule: string }
  | { readonly grid: string };

/** A piece of a line: a reason, what follows from it, or the words between. */
export interface Part {
  readonly text: string;
  readonly role: "because" | "so" | "plain";
  readonly of?: About;
}

/** `pointing` leans on the drawing ("this row"), `placed` names places ("row 3 of the mill"). */
export type Style = "pointing" | "placed";

export const textOf = (parts: readonly Part[]): string => parts.map(({ text }) => text).join("");

export const wordsIn = (text: string): number => text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
