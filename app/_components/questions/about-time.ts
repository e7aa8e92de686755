/** A time to answer, in words that promise no more than they know: tens of seconds, then whole minutes. */
export function aboutTime(seconds: number): string {
  const tens = Math.max(1, Math.ceil(seconds / 10));
  return tens < 6 ? `about ${tens * 10} s` : `about ${Math.max(1, Math.round(seconds / 60))} min`;
}
