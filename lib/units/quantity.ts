/**
 * Quantities that carry their unit in the type. A number without a unit does not compile where a
 * quantity is wanted, and metres do not compile where seconds are wanted.
 */

declare const unitOf: unique symbol;

/** A finite number in the unit U. The brand exists for the compiler only; at run time it is a number. */
export type Quantity<U extends string> = number & { readonly [unitOf]: U };

export type Metres = Quantity<'m'>;
export type SquareMetres = Quantity<'m²'>;
export type CubicMetres = Quantity<'m³'>;
export type Litres = Quantity<'L'>;
export type Seconds = Quantity<'s'>;
export type Minutes = Quantity<'min'>;
export type WattHours = Quantity<'Wh'>;
export type Kilowatts = Quantity<'kW'>;
export type KilowattsPerSquareMetre = Quantity<'kW/m²'>;
export type Volts = Quantity<'V'>;
export type Amperes = Quantity<'A'>;
export type AmpereHours = Quantity<'Ah'>;
export type Milligrams = Quantity<'mg'>;
export type MilligramsPerCubicMetre = Quantity<'mg/m³'>;
export type GramsPerMole = Quantity<'g/mol'>;
export type PartsPerMillion = Quantity<'ppm'>;
export type AirChangesPerHour = Quantity<'1/h'>;
export type CubicMetresPerHour = Quantity<'m³/h'>;
export type CubicMetresPerSecond = Quantity<'m³/s'>;
export type MetresPerSecond = Quantity<'m/s'>;
export type Kelvin = Quantity<'K'>;
export type Celsius = Quantity<'°C'>;

/** A checked outcome: user input that cannot be used comes back as a value with the reason. */
export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
export const refuse = (reason: string): { readonly ok: false; readonly reason: string } => ({ ok: false, reason });

/**
 * Puts a unit on a number that the caller has computed or already checked.
 * @throws when the number is not finite: that is a broken invariant of ours, never a user's mistake
 */
export function of<Q extends Quantity<string>>(value: number): Q {
  if (!Number.isFinite(value)) throw new Error(`a quantity must be finite, got ${value}`);
  return value as Q;
}
