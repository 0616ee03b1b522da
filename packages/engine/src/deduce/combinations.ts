/** Every choice of `size` items, in the order of the list. */
export function* combinations<T>(list: readonly T[], size: number, from = 0): Generator<readonly T[]> {
  if (size === 0) yield [];
  else
    for (let k = from; k <= list.length - size; k++)
      for (const rest of combinations(list, size - 1, k + 1)) yield [list[k]!, ...rest];
}
