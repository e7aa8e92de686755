import type { LineAcceptance } from './check/check-event';
import type { AdultPart } from './choices';
import type { EventDetails, Schedule } from './details';
import type { EventState } from './standing';

export interface EventAdult { readonly name: string; readonly parts: readonly AdultPart[]; readonly phone: string | null }

/** What the first form of an event asks. */
export interface EventBasics {
  readonly title: string;
  readonly siteId: string;
  readonly startsAt: Date;
  readonly endsAt: Date;
  readonly teams: number | null;
  readonly people: number | null;
  readonly spectators: number | null;
  readonly schedule: Schedule;
}

/** An event as it is kept, with all that hangs on it. */
export interface EventRecord extends EventBasics {
  readonly id: string;
  readonly state: EventState;
  readonly siteName: string;
  readonly siteKind: string;
  readonly details: EventDetails;
  readonly adults: readonly EventAdult[];
  readonly packIds: readonly string[];
  readonly acceptances: readonly LineAcceptance[];
  readonly contentVersion: string;
  readonly preparedById: string;
  readonly preparedByName: string;
  readonly officerId: string | null;
  readonly submittedAt: Date | null;
  readonly returnedReason: string | null;
  readonly signedAt: Date | null;
  readonly withdrawnAt: Date | null;
  readonly withdrawnReason: string | null;
  readonly cancelledAt: Date | null;
  readonly cancelledReason: string | null;
  readonly copiedFromId: string | null;
  readonly revision: number;
}
