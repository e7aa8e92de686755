import type { Doing, Kind } from './choices';
import type { Facts } from './facts';

interface Row { readonly doing: Doing; readonly anyOf: readonly Kind[]; readonly risk: string }

const BURNS: readonly Kind[] = ['fire', 'smoke-or-venting'];

/** Scenario ids of the content, by what was going on and what came of it; the first row that fits. Our judgement. */
const ROWS: readonly Row[] = [
  { doing: 'charging', anyOf: BURNS, risk: 'charge-runaway' },
  { doing: 'charging-unwatched', anyOf: BURNS, risk: 'charge-unwatched' },
  { doing: 'stored', anyOf: BURNS, risk: 'store-runaway' },
  { doing: 'stored', anyOf: ['swelling'], risk: 'store-full' },
  { doing: 'waiting', anyOf: BURNS, risk: 'isolated-left' },
  { doing: 'plugging', anyOf: ['short-circuit', ...BURNS], risk: 'short-circuit' },
  { doing: 'flying', anyOf: BURNS, risk: 'crash-delayed-fire' },
  { doing: 'flying', anyOf: ['drone-hit', 'injury'], risk: 'rotor-strike' },
  { doing: 'flying', anyOf: ['swelling'], risk: 'over-discharge' },
  { doing: 'travelling', anyOf: BURNS, risk: 'transit-fire' },
  { doing: 'travelling', anyOf: ['swelling', 'heat'], risk: 'hot-vehicle' },
  { doing: 'repairing', anyOf: [...BURNS, 'short-circuit', 'injury'], risk: 'untrained-handling' },
  { doing: 'discarding', anyOf: BURNS, risk: 'waste-fire' },
];

/** Every scenario the table names, for a test that the content knows them. */
export const LIKELY_RISKS: readonly string[] = [...new Set(ROWS.map(({ risk }) => risk))];

/** The risk an incident most likely belongs to, until the officer says so; null when none fits. */
export function likelyRisk({ doing, kinds }: Pick<Facts, 'doing' | 'kinds'>): string | null {
  return ROWS.find((row) => row.doing === doing && row.anyOf.some((kind) => kinds.includes(kind)))?.risk ?? null;
}
