/** Where in a text: line and column from 1, columns in characters as a person counts them. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** Finds positions in a text; lines end with LF or CRLF. */
export const positionsIn = (text: string): ((offset: number) => Position) => {
  const starts = [0];
  for (let k = text.indexOf("\n"); k >= 0; k = text.indexOf("\n", k + 1)) starts.push(k + 1);
  return (offset) => {
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: [...text.slice(starts[low]!, offset)].length + 1 };
  };
};
