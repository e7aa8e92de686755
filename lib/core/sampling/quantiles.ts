/**
 * Quantiles by linear interpolation at (n − 1)·p (amendment A14; type 7 of Hyndman and Fan, The American
 * Statistician 50(4), 1996), by partial ordering: a full sort of every risk's draws would cost more than
 * drawing them. Reorders `values`.
 * @param values at least one finite number
 * @param probabilities rising, each 0 to 1
 * @returns one quantile for each probability, never falling
 */
export function quantilesInPlace(values: Float64Array, probabilities: readonly number[]): readonly number[] {
  let settled = 0;
  return probabilities.map((probability) => {
    const position = (values.length - 1) * probability;
    const below = Math.floor(position);
    select(values, below, settled);
    settled = below;
    const low = values[below] ?? 0;
    if (position === below) return low;
    return low + (position - below) * (least(values, below + 1) - low);
  });
}

/** Puts the k-th smallest at k; everything before `from` is already at most everything after it. */
function select(values: Float64Array, k: number, from: number): void {
  let left = from;
  let right = values.length - 1;
  while (right > left) {
    const pivot = medianOfThree(values, left, (left + right) >> 1, right);
    let low = left;
    let high = right;
    while (low <= high) {
      while ((values[low] as number) < pivot) low += 1;
      while ((values[high] as number) > pivot) high -= 1;
      if (low <= high) {
        const held = values[low] as number;
        values[low] = values[high] as number;
        values[high] = held;
        low += 1;
        high -= 1;
      }
    }
    if (k <= high) right = high;
    else if (k >= low) left = low;
    else return;
  }
}

function medianOfThree(values: Float64Array, a: number, b: number, c: number): number {
  const x = values[a] as number;
  const y = values[b] as number;
  const z = values[c] as number;
  return Math.max(Math.min(x, y), Math.min(Math.max(x, y), z));
}

function least(values: Float64Array, from: number): number {
  let smallest = values[from] as number;
  for (let index = from + 1; index < values.length; index += 1) if ((values[index] as number) < smallest) smallest = values[index] as number;
  return smallest;
}
