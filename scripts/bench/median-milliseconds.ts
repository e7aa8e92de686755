/** Median time of several runs after three that only warm up. */
export function medianMilliseconds(run: () => unknown, times: number): number {
  for (let warm = 0; warm < 3; warm += 1) run();
  const measured = Array.from({ length: times }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  }).sort((one, other) => one - other);
  return measured[measured.length >> 1] ?? Number.NaN;
}
