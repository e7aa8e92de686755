import 'server-only';
import { unstable_rethrow } from 'next/navigation';
import { getEmergencyPlace, type EmergencyPlace } from '@/lib/db/incidents/emergency-place';
import { currentActor } from '../actor';
import { database } from '../database';
import { faultOfError } from '../forms/fault-of-error';
import { rememberedSchool } from './remembered-school';

export type { EmergencyPlace };

export interface EmergencyHere {
  readonly place: EmergencyPlace | null;
  readonly isSignedIn: boolean;
}

/**
 * Returns what the school of whoever asks, or of this device, has filled in for emergencies. When that cannot be read
 * the fault is logged and there is no place: what to do must be shown whatever else is broken.
 * @param siteId the site people are at, when they said so
 */
export async function emergencyHere(siteId: string | null): Promise<EmergencyHere> {
  try {
    const actor = await currentActor();
    const schoolId = actor?.schoolId ?? (await rememberedSchool());
    const place = schoolId === null ? null : await getEmergencyPlace(database(), schoolId, siteId);
    return { place, isSignedIn: actor !== null };
  } catch (error) {
    unstable_rethrow(error);
    faultOfError(error);
    return { place: null, isSignedIn: false };
  }
}
