/** A number as a person types it, or the reason why it cannot be read. */
export type TypedNumber = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly reason: string };

const PLAIN = /^[-−]?\d+(?:[.,]\d+)?$/;
const MAYBE_THOUSANDS = /^[-−]?[1-9]\d{0,2},\d{3}$/;

/**
 * Reads a typed number. A decimal point and a decimal comma are both read; "1,200" is asked about, because it
 * is twelve hundred in one country and one and a fifth in the next.
 * @param typed what stands in the field, white space around and between digits allowed
 */
export function readTypedNumber(typed: string): TypedNumber {
  const text = typed.replace(/[\s\u00a0\u202f]/gu, '');
  if (MAYBE_THOUSANDS.test(text)) {
    const whole = text.replace(',', '');
    return { ok: false, reason: `${text} can be read in two ways: write ${whole}, or ${text.replace(',', '.')} with a point` };
  }
  if (!PLAIN.test(text)) return { ok: false, reason: 'Enter a number in digits, such as 12 or 0.5' };
  return { ok: true, value: Number(text.replace('−', '-').replace(',', '.')) };
}
