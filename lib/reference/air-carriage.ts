/**
 * Spare lithium-ion batteries in passengers' cabin baggage, by rated energy. The airline and the country
 * come first; rules change, so the date matters.
 * Source: TSA page for 100 Wh (READ-P), FAA PackSafe for 101 to 160 Wh, two spares, and damaged packs
 * (READ-C, READ-S), ICAO Technical Instructions 8;1 for more (MEM H); REFERENCES F.2, collected 25 Nov 2026.
 */
export const AIR_CARRIAGE = {
  /** up to here in the cabin without asking, Wh */
  freeUpTo: 100,
  /** up to here with the airline's approval, Wh; nothing above it flies as baggage */
  approvalUpTo: 160,
  /** spares a person may carry with approval */
  sparesWithApproval: 2,
} as const;
