import 'server-only';
import { randomUUID } from 'node:crypto';
import { findDraft } from '@/lib/db/incidents/drafts';
import { listPacks } from '@/lib/db/packs/read-packs';
import { listSites } from '@/lib/db/places/read-sites';
import { schoolScope } from '@/lib/db/scope';
import type { Typed } from '@/lib/forms/form-state';
import { localOfMoment } from '@/lib/forms/local-moment';
import { readDraft } from '@/lib/incidents/draft';
import { momentWords } from '@/lib/wording/dates';
import type { Actor } from '../actor';
import { database } from '../database';
import { currentSchool } from '../people/current-school';

/** A place to choose: an area, the rest of a site, or none of the school's. */
export interface PlaceOption { readonly value: string; readonly label: string }

/** What the form offers to choose from. */
export interface IncidentChoices {
  readonly places: readonly PlaceOption[];
  readonly packLabels: readonly string[];
}

/** What the form of a new incident is drawn from. */
export interface IncidentForm extends IncidentChoices {
  /** what stands in it at first: a kept draft, or the time */
  readonly typed: Typed;
  readonly draftSaved: string | null;
  readonly timeZone: string;
  readonly personId: string;
}

export async function incidentChoices(actor: Actor): Promise<IncidentChoices> {
  const scope = schoolScope(actor);
  const sites = await listSites(database(), scope);
  const packs = await listPacks(database(), scope);
  const ofSites = sites.flatMap(({ id, name, areas }) => [...areas.map((area) => ({ value: `area:${id}:${area.id}`, label: `${name}: ${area.name}` })), { value: `site:${id}`, label: areas.length === 0 ? name : `${name}: elsewhere there` }]);
  return {
    places: [...ofSites, { value: 'vehicle', label: 'In a vehicle' }, { value: 'elsewhere', label: 'Somewhere else' }],
    packLabels: packs.filter(({ pack }) => pack.state !== 'handed-over').map(({ pack }) => pack.label).sort((a, b) => a.localeCompare(b, undefined, { numeric: true })),
  };
}

/** Returns what the form of a new incident needs: the time, the draft of whoever asks, a key of its own. */
export async function incidentForm(actor: Actor): Promise<IncidentForm> {
  const [school, draft, choices] = [await currentSchool(actor), await findDraft(database(), actor), await incidentChoices(actor)];
  const fresh = { clientKey: randomUUID(), when: localOfMoment(new Date(), school.timeZone) };
  return {
    ...choices, timeZone: school.timeZone, personId: actor.personId,
    typed: draft === null ? fresh : { ...fresh, ...readDraft(draft.typedJson) },
    draftSaved: draft === null ? null : momentWords(draft.savedAt, school),
  };
}
