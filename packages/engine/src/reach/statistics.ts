/** 0 of no numbers. */
export const mean = (numbers: readonly number[]): number =>
  numbers.length === 0 ? 0 : numbers.reduce((sum, number) => sum + number, 0) / numbers.length;

/** How far the mean of as many other numbers may well lie from this one's; 0 where a single number can't tell. */
export const standardError = (numbers: readonly number[]): number => {
  if (numbers.length < 2) return 0;
  const middle = mean(numbers);
  const squares = numbers.reduce((sum, number) => sum + (number - middle) ** 2, 0);
  return Math.sqrt(squares / (numbers.length - 1) / numbers.length);
};
