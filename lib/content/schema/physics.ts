import { z } from 'zod';
import { finite, text } from './parts';

const physicsId = z.enum([
  'hfYield', 'gasVolume', 'coFraction', 'lflVentGas', 'peakHeatRelease', 'radiantFraction',
  'releaseDuration', 'packToPackTime', 'burningTogether', 'nearTime', 'flameBase',
]);
const constantId = z.enum([
  'molarVolume', 'molarMassHF', 'molarMassCO', 'nominalCellVoltage', 'coDoseDenominator', 'woodIgnition',
  'painFlux', 'noPainFlux', 'burnFlux', 'reachMin', 'nearRefVolume', 'nearFactorMax', 'outdoorVolume',
  'outdoorAch', 'windSpeed', 'tempDiff', 'closedAch', 'continuousFactor', 'seasonDays', 'openSpread',
]);

export const spreadSchema = z.strictObject({ id: physicsId, unit: text, low: finite, mid: finite, high: finite, kind: text, source: text });
export const constantSchema = z.strictObject({ id: constantId, value: finite, unit: text, kind: text, source: text, low: finite, high: finite });

export const aeglSchema = z.strictObject({
  durationsMin: z.array(z.number().gt(0)).min(2),
  HF: z.strictObject({ 1: z.array(finite), 2: z.array(finite), 3: z.array(finite) }),
  CO: z.strictObject({ 2: z.array(finite), 3: z.array(finite) }),
  rule: text,
  kind: text,
  source: text,
});

const gases = { HF: z.number().gt(0), CO: z.number().gt(0) };
export const idlhSchema = z.strictObject({ ...gases, kind: text, source: text });
export const reentrySchema = z.strictObject({ ...gases, rule: text, kind: text, source: text });

export const ruleSchema = z.strictObject({ summary: text, steps: z.array(text), kind: text });
export const packCountRuleSchema = z.strictObject({
  steps: z.array(text),
  kind: text,
  perContainment: z.array(z.strictObject({ state: text, low: finite, mid: finite, high: finite, kind: text, basis: text })),
  note: text,
});

export const restVoltageSchema = z.strictObject({
  points: z.array(z.strictObject({ volts: z.number().gt(0), charge: z.number().min(0).max(100) })).min(2),
  rule: text,
  kind: text,
  source: text,
});
export const airClassSchema = z.strictObject({ id: text, title: text, low: finite, mid: finite, high: finite, unit: text, kind: text, source: text });
