import { type Digits, listOf } from "../board/digits.ts";
import { counted, listed } from "../speech/english/counts.ts";

/** Digits as the file writes them: "1-4", or "1 2 3 5" where they are no run. */
export const digitsText = (digits: Digits): string => {
  const list = listOf(digits);
  const isRun = list.length > 2 && list.at(-1)! - list[0]! === list.length - 1;
  return isRun ? `${list[0]}-${list.at(-1)}` : list.join(" ");
};

/** Digits as they are said: "1 to 4", or "1, 2 or 5" where they are no run. */
export const digitsSaid = (digits: Digits): string => {
  const written = digitsText(digits);
  return written.includes("-") ? written.replace("-", " to ") : listed(listOf(digits), "or");
};

/** "1-4", or "1-4 and 1-6" where the cells differ in what they can hold. */
export const domainsText = (domains: readonly Digits[]): string => listed([...new Set(domains.map(digitsText))]);

/** Why cells of these digits can't make a number, where these can: "two different digits of 1-4 reach 7 at most, not 8". */
export const unreachable = (
  domains: readonly Digits[],
  { how, values, wanted }: { readonly how?: string; readonly values: Iterable<number>; readonly wanted: number },
): string => {
  const one = domains.length === 1;
  const what = `${counted(domains.length)} ${one ? "digit" : `${how === undefined ? "" : `${how} `}digits`} of ${domainsText(domains)}`;
  const sorted = [...values].sort((a, b) => a - b);
  const below = sorted.findLast((value) => value < wanted);
  const above = sorted.find((value) => value > wanted);
  if (above === undefined) return `${what} ${one ? "reaches" : "reach"} ${below} at most, not ${wanted}`;
  const make = one ? "makes" : "make";
  if (below === undefined) return `${what} ${make} ${above} at least, not ${wanted}`;
  return `${what} ${make} ${below} or ${above}, but not ${wanted}`;
};
