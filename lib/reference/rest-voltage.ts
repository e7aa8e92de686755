/**
 * State of charge of a lithium-polymer cell from its voltage at rest. A table copied widely in the hobby,
 * the same in several public programs; no first measurement is known. Typical only: at 3.8 V sources
 * name anything from 30 to 45 %.
 * Source: REFERENCES F.1 (READ-S), collected 25 Nov 2026. Kind: common practice.
 */
export interface RestPoint { readonly volts: number; /** per cent of full charge */ readonly charge: number }

/** Rising in both columns. */
export const REST_VOLTAGE: readonly RestPoint[] = [
  { volts: 3.27, charge: 0 }, { volts: 3.61, charge: 5 }, { volts: 3.69, charge: 10 }, { volts: 3.71, charge: 15 },
  { volts: 3.73, charge: 20 }, { volts: 3.75, charge: 25 }, { volts: 3.77, charge: 30 }, { volts: 3.79, charge: 35 },
  { volts: 3.8, charge: 40 }, { volts: 3.82, charge: 45 }, { volts: 3.84, charge: 50 }, { volts: 3.85, charge: 55 },
  { volts: 3.87, charge: 60 }, { volts: 3.91, charge: 65 }, { volts: 3.95, charge: 70 }, { volts: 3.98, charge: 75 },
  { volts: 4.02, charge: 80 }, { volts: 4.08, charge: 85 }, { volts: 4.11, charge: 90 }, { volts: 4.15, charge: 95 },
  { volts: 4.2, charge: 100 },
];
