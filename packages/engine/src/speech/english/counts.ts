import { type Digits, listOf } from "../../board/digits.ts";

const small = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/** Counts of things as words up to twelve. */
export const counted = (number: number): string => small[number] ?? String(number);

const ordinals = ["", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];

const endings: Readonly<Record<string, string>> = { one: "st", two: "nd", few: "rd", other: "th" };
const endingOf = new Intl.PluralRules("en", { type: "ordinal" });

/** A place as it is said: "fourth", from 1; in words up to ten. */
export const ordinal = (place: number): string => ordinals[place] ?? `${place}${endings[endingOf.select(place)]}`;

/** "a, b and c", or another joining word. */
export const listed = (words: readonly (string | number)[], join = "and"): string => {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${join} ${words.at(-1)}`;
};

/** "row 5, column 8; row 6, column 7; and row 7, column 7": what has commas in it already. */
export const listedApart = (items: readonly string[]): string =>
  items.length < 3 ? items.join(", and ") : `${items.slice(0, -1).join("; ")}; and ${items.at(-1)}`;

/** "1, 2 and 4"; a long run is said by its ends: "1 to 6". */
export const digitsSaid = (digits: Digits, join = "and"): string => {
  const list = listOf(digits);
  const isRun = list.length > 3 && list.at(-1)! - list[0]! === list.length - 1;
  return isRun ? `${list[0]} to ${list.at(-1)}` : listed(list, join);
};

/** "an 8", "a 3". */
export const aDigit = (digit: number): string => `${/^(8|11|18)/.test(String(digit)) ? "an" : "a"} ${digit}`;

/** "an X-sum", "a cage". */
export const aNoun = (noun: string): string => `${/^([aeiou]|X\b)/.test(noun) ? "an" : "a"} ${noun}`;

/** "an 8 or a 3" of two, else "1, 2 or 4". */
export const aDigitOf = (digits: Digits): string => {
  const list = listOf(digits);
  return list.length <= 2 ? listed(list.map(aDigit), "or") : digitsSaid(digits, "or");
};

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
