/**
 * Value of a polynomial by Horner's rule.
 * @param coefficients from the highest power down to the constant
 */
export function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * x + coefficient;
  return value;
}
