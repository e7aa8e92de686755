import type { GramsPerMole, Litres, Milligrams, MilligramsPerCubicMetre, PartsPerMillion } from '@/lib/units/quantity';

/**
 * Volume share of a gas from its mass concentration: ppm = mg/m³ · Vm / M.
 * Source: ideal gas; Vm = 24.45 L/mol at 25 °C and 101.325 kPa (REFERENCES CK-09).
 * @param molarVolume L/mol, above 0
 */
export function toPpm(concentration: MilligramsPerCubicMetre, molarMass: GramsPerMole, molarVolume: number): PartsPerMillion {
  return ((concentration * molarVolume) / molarMass) as PartsPerMillion;
}

/** Mass of a volume of gas: mg = L · M / Vm · 1000. Same source and conditions as `toPpm`. */
export function massOfGas(volume: Litres, molarMass: GramsPerMole, molarVolume: number): Milligrams {
  return ((volume * molarMass) / molarVolume * 1000) as Milligrams;
}
