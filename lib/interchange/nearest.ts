/** Longer names are not compared: nobody mistypes them, and the work grows with the square. */
const LONGEST = 60;

/**
 * The known name that somebody probably meant.
 * @returns the name with the fewest single-letter changes (Levenshtein distance), or undefined when a third or
 * more of the letters would have to change
 */
export function nearest(name: string, known: readonly string[]): string | undefined {
  if (name.length > LONGEST) return undefined;
  const allowed = Math.max(1, Math.floor(name.length / 3));
  const near = known.filter((candidate) => Math.abs(candidate.length - name.length) <= allowed);
  const ranked = near.map((candidate) => ({ candidate, changes: changesBetween(name.toLowerCase(), candidate.toLowerCase()) }))
    .sort((a, b) => a.changes - b.changes);
  const best = ranked[0];
  return best !== undefined && best.changes <= allowed ? best.candidate : undefined;
}

function changesBetween(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (let i = 1; i <= from.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const swap = (row[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
