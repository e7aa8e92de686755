import 'server-only';
import { cautiousRecord } from '@/lib/assessments/cautious-record';
import { recordSince } from '@/lib/assessments/record-since';
import { isOpen } from '@/lib/assessments/standing';
import { documentOf, type VersionRecord } from '@/lib/assessments/version';
import { contentByVersion } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';
import { preventiveProducts } from '@/lib/core/risk/preventive-products';
import { loggedAt } from '@/lib/db/assessments/logged-at';
import { readVersion } from '@/lib/db/assessments/read-version';
import { schoolScope } from '@/lib/db/scope';
import { recordForEngine } from '@/lib/incidents/record-for-engine';
import { sessionsToExposure } from '@/lib/sessions/to-exposure';
import type { Actor } from '../actor';
import { database } from '../database';

/**
 * A version with what the school logged at its site, so far as it is still open: charges, sessions and incidents move
 * the rates. Once handed over, a version keeps the record it was handed over with.
 */
export async function withRecord(actor: Actor, version: VersionRecord, now: Date): Promise<VersionRecord> {
  const content = contentByVersion(version.contentVersion);
  if (!isOpen(version.state) || content === undefined) return version;
  const scope = schoolScope(actor);
  const since = recordSince(now);
  const logged = await loggedAt(database(), scope, version.siteId, since);
  const seen = recordForEngine(content.scenarios, logged.incidents, sessionsToExposure(logged.sessions, { from: since, to: now, flies: logged.flies }));
  // A version that came back still carries the record it was handed over with.
  const without = { ...version, settings: { ...version.settings, record: undefined } };
  if (Object.keys(seen).length === 0) return without;
  const before = await Promise.all(logged.inForce.map((id) => readVersion(database(), scope, id)));
  const record = cautiousRecord(seen, productsOf(content, version), before.flatMap((one) => productsOfSigned(one)));
  return { ...without, settings: { ...without.settings, record } };
}

const productsOf = (content: Content, version: VersionRecord) => preventiveProducts(content, documentOf(version));

function productsOfSigned(version: VersionRecord | null) {
  const content = version === null ? undefined : contentByVersion(version.contentVersion);
  return version === null || content === undefined ? [] : [productsOf(content, version)];
}
