/**
 * The element at a position that is known to be there.
 * @throws when it is not: that is a broken assumption of ours, and must not go on as a zero
 */
export function at<T>(values: ArrayLike<T>, index: number): T {
  const value = values[index];
  if (value === undefined) throw new Error(`nothing at ${index} of ${values.length}`);
  return value;
}
