/** Digits that a person takes in; anything finer than this is not known anyway. */
const SHOWN_DIGITS = 2;

const formats = {
  rounded: new Intl.NumberFormat('en-GB', { maximumSignificantDigits: SHOWN_DIGITS }),
  whole: new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 }),
  exact: new Intl.NumberFormat('en-GB', { maximumFractionDigits: 20 }),
};

/** Smaller than this no table needs; with so many zeros nobody reads it right. */
const LEAST_SHOWN = 1e-4;

/**
 * A number to two significant figures, with thousands separators: 1,234 becomes "1,200", 0.0234 "0.023".
 * For display only; everything is compared and computed unrounded.
 * @throws when the number is not finite: there is no honest way to write it
 */
export function rounded(value: number): string {
  return finite(value) !== 0 && Math.abs(value) < LEAST_SHOWN ? 'close to 0' : formats.rounded.format(value);
}

/** A number to the next whole one, with thousands separators. */
export function whole(value: number): string {
  return formats.whole.format(finite(value));
}

/** A number somebody gave, as it was given, with thousands separators. */
export function exact(value: number): string {
  return formats.exact.format(finite(value));
}

/** The number that `rounded` shows. */
export function roundedValue(value: number): number {
  return Number(finite(value).toPrecision(SHOWN_DIGITS));
}

/**
 * A share of one in per cent: "58 %". What would round to none or to all of it is said to be close to it,
 * so that neither is ever claimed.
 * @param share 0 to 1 for a share; a change may be negative
 */
export function percent(share: number): string {
  const hundredths = finite(share) * 100;
  if (hundredths !== 0 && Math.abs(hundredths) < 0.5) return 'less than 1 %';
  if (share < 1 && hundredths >= 99.5) return 'over 99 %';
  return `${whole(hundredths)} %`;
}

/** From one share to another: "44 to 69 %". */
export function percentRange(low: number, high: number): string {
  return `${whole(finite(low) * 100)} to ${whole(finite(high) * 100)} %`;
}

/** Digits and exponent of a number in scientific form, so that screen and paper can raise the exponent. */
export interface Scientific { readonly digits: string; readonly exponent: number }

/** 0.0712 becomes 7.1 and −2. Zero has the exponent 0. */
export function scientific(value: number): Scientific {
  const [digits = '0', exponent = '0'] = finite(value).toExponential(SHOWN_DIGITS - 1).split('e');
  return { digits: digits.replace('-', '−'), exponent: Number(exponent) };
}

function finite(value: number): number {
  if (!Number.isFinite(value)) throw new Error(`a number to show must be finite, got ${value}`);
  return value;
}
