import { z } from 'zod';
import type { CsvColumn } from '@/lib/csv/write-csv';
import { labelOf } from '@/lib/forms/choices';
import { KINDS } from './choices';
import { FACT_NAMES, FACT_TITLES, type Facts } from './facts';
import { type FactNames, sayFact } from './say-fact';
import { INCIDENT_STATES, type IncidentState, incidentStateWords } from './standing';

/** A row of the list. */
export interface ListedIncident {
  readonly id: string;
  readonly number: number;
  readonly state: IncidentState;
  /** as they are now, corrections taken in */
  readonly facts: Facts;
  readonly byName: string;
  readonly recordedAt: Date;
  readonly closedAt: Date | null;
}

/** What a list is asked for in its address; what cannot be read asks for nothing. */
export const IncidentQuerySchema = z.object({
  q: z.string().trim().max(100).catch('').default(''),
  state: z.enum(['', 'open', ...INCIDENT_STATES]).catch('').default(''),
  kind: z.string().max(40).catch('').default(''),
});
export type IncidentQuery = z.output<typeof IncidentQuerySchema>;

/** The incidents that hold every word asked for, in any of their facts, whichever case. */
export function searchIncidents(incidents: readonly ListedIncident[], { q, state, kind }: IncidentQuery, names: FactNames): readonly ListedIncident[] {
  const wanted = q.toLowerCase().split(/\s+/).filter((word) => word !== '');
  return incidents.filter((incident) => {
    const inState = state === '' || incident.state === state || (state === 'open' && incident.state !== 'closed');
    if (!inState || (kind !== '' && !incident.facts.kinds.some((one) => one === kind))) return false;
    const words = [`${incident.number}`, incident.byName, ...FACT_NAMES.map((name) => sayFact(name, incident.facts, names))].join(' ').toLowerCase();
    return wanted.every((word) => words.includes(word));
  });
}

/** One line: what it was. */
export function incidentTitle({ kinds }: Pick<Facts, 'kinds'>): string {
  const [first = '', ...rest] = kinds.map((kind) => labelOf(KINDS, kind));
  return [first, ...rest.map((label) => label.charAt(0).toLowerCase() + label.slice(1))].join('; ');
}

/** The columns of the exported table. Who was affected is not among them. */
export function incidentColumns(names: FactNames): readonly CsvColumn<ListedIncident>[] {
  return [
    { head: 'Number', cell: ({ number }) => number },
    { head: 'State', cell: ({ state }) => incidentStateWords(state) },
    { head: 'When (UTC)', cell: ({ facts }) => facts.when.at },
    ...FACT_NAMES.map((name) => ({ head: FACT_TITLES[name], cell: ({ facts }: ListedIncident) => sayFact(name, facts, names) })),
    { head: 'Recorded by', cell: ({ byName }) => byName },
    { head: 'Recorded (UTC)', cell: ({ recordedAt }) => recordedAt.toISOString() },
    { head: 'Closed (UTC)', cell: ({ closedAt }) => closedAt?.toISOString() ?? null },
  ];
}
