/** Guidance that stands with the picture of smoke: first what the picture does not say, then what people ask. */
export const SMOKE_GUIDANCE: readonly string[] = ['smoke-figure', 'extinguishers'];
