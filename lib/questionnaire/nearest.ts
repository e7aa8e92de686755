/** Longer names are not compared: nobody mistypes them, and the work grows with the square. */
const LONGEST = 60;

/**
 * The known name that somebody probably meant.
 * @returns the name with the fewest single-letter changes (Levenshtein distance), the first of equals, or
 * undefined when a third or more of the letters would have to change
 */
export function nearest(name: string, known: readonly string[]): string | undefined {
  if (name.length > LONGEST) return undefined;
  const allowed = Math.max(1, Math.floor(name.length / 3));
  const wanted = name.toLowerCase();
  let best: string | undefined;
  let fewest = allowed + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - name.length) >= fewest) continue;
    const changes = changesBetween(wanted, candidate.toLowerCase(), fewest);
    if (changes < fewest) { fewest = changes; best = candidate; }
  }
  return best;
}

/** Single-letter changes from one word to another; `limit` as soon as there are that many. */
function changesBetween(from: string, to: string, limit: number): number {
  let row = Uint16Array.from({ length: to.length + 1 }, (_, at) => at);
  let next = new Uint16Array(to.length + 1);
  for (let i = 1; i <= from.length; i += 1) {
    next[0] = i;
    let least = i;
    for (let j = 1; j <= to.length; j += 1) {
      const swap = (row[j - 1] as number) + (from[i - 1] === to[j - 1] ? 0 : 1);
      const changes = Math.min(swap, (row[j] as number) + 1, (next[j - 1] as number) + 1);
      next[j] = changes;
      if (changes < least) least = changes;
    }
    if (least >= limit) return limit;
    [row, next] = [next, row];
  }
  return row[to.length] as number;
}
