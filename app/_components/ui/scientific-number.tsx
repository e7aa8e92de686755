import { scientific } from '@/lib/wording/numbers';

/** A number in scientific form, the exponent raised. */
export function ScientificNumber({ value }: { readonly value: number }) {
  const { digits, exponent } = scientific(value);
  if (exponent === 0) return <span className="num">{digits}</span>;
  return <span className="num nowrap">{digits} × 10<sup>{String(exponent).replace('-', '−')}</sup></span>;
}
