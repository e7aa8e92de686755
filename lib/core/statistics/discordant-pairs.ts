/**
 * Distribution of the number of discordant pairs between two rankings of n things that have nothing to do
 * with each other: probabilities of 0, 1, … n(n − 1)/2 pairs. Adding the j-th thing adds 0 to j − 1 pairs,
 * each equally likely.
 * Source: Kendall, "Rank correlation methods" (from memory); checked against counting every order.
 * @param n whole, 1 or more
 */
export function discordantPairs(n: number): readonly number[] {
  let shares: readonly number[] = [1];
  for (let j = 2; j <= n; j += 1) shares = spreadOver(shares, j);
  return shares;
}

/** Distribution of a sum with a number that is 0 to width − 1, all equally likely: a window that slides over the shares. */
function spreadOver(shares: readonly number[], width: number): readonly number[] {
  const wider: number[] = [];
  let window = 0;
  for (let total = 0; total < shares.length + width - 1; total += 1) {
    window += (shares[total] ?? 0) - (shares[total - width] ?? 0);
    wider.push(Math.max(0, window) / width);
  }
  return wider;
}

/**
 * How many pairs in order from either end a two-sided interval may leave out: the largest r such that fewer
 * than r discordant pairs come up with a chance of at most (1 − confidence) / 2.
 * @returns 0 when not even the outermost pair may be left out: there is no such interval
 */
export function outermostRank(n: number, confidence: number): number {
  const allowed = (1 - confidence) / 2;
  let rank = 0;
  let chance = 0;
  for (const share of discordantPairs(n)) {
    chance += share;
    // the shares are sums of fractions: a chance that equals the allowed one must not fail by rounding
    if (chance > allowed * (1 + 1e-12)) break;
    rank += 1;
  }
  return rank;
}
