import type { AdultPart } from '../choices';
import type { EventDetails } from '../details';

/** Charge of a pack by its last check: within the storage window, fuller, lower; null when no check measured it. */
export type PackCharge = 'storage' | 'above' | 'below';

/** A pack of the event as the register has it now. */
export interface CheckedPack {
  readonly label: string;
  /** of the register: in-use, watch, isolated, retired, handed-over */
  readonly state: string;
  /** a sign of damage stands against it: isolated, or the last check found what isolates or is left where it lies */
  readonly damaged: boolean;
  /** what the content's rules stop until it is checked again; null when they let it travel */
  readonly stopped: string | null;
  readonly lastCheckAt: Date | null;
  readonly charge: PackCharge | null;
  /** null where it is neither printed nor to be worked out */
  readonly energyWh: number | null;
}

/** Whether an assessment holds; the words of `Force` in lib/assessments, which this area may not know. */
export type AssessmentForce = 'in force' | 'suspended' | 'run out' | 'review asked' | 'superseded' | 'not signed';

/** The site's signed assessment, with what it took for granted. */
export interface CheckedAssessment {
  readonly versionId: string;
  readonly name: string;
  readonly force: AssessmentForce;
  /** calendar days YYYY-MM-DD; null when no day was named */
  readonly holdsUntil: string | null;
  readonly covers: { readonly packs: number; readonly storedWh: number; readonly people: number; readonly spectators: number } | null;
  /** stop conditions whose acceptance has ended by the last day of the event */
  readonly endedAcceptances: readonly string[];
}

export interface CheckedAdult { readonly name: string; readonly parts: readonly AdultPart[]; readonly phone: string | null }

/** All that the check before leaving is made of; nothing else is read. */
export interface CheckFacts {
  readonly eventId: string;
  readonly now: Date;
  readonly startsAt: Date;
  /** last calendar day of the event, YYYY-MM-DD */
  readonly lastDay: string;
  readonly manyDays: boolean;
  readonly site: {
    readonly id: string;
    readonly kind: 'own' | 'away';
    readonly emergencyNumber: string | null;
    readonly meetingPlace: string | null;
    readonly hasOutdoorSpot: boolean;
    readonly hasChargingArea: boolean;
  };
  readonly people: number | null;
  readonly spectators: number | null;
  readonly adults: readonly CheckedAdult[];
  readonly packs: readonly CheckedPack[];
  readonly assessment: CheckedAssessment | null;
  /** drafts and such of this site that are on their way to be signed */
  readonly assessmentOnItsWay: string | null;
  readonly details: EventDetails;
  /** titles of the venue's controls that nobody has agreed to */
  readonly notAgreed: readonly string[];
  /** how old the last check of a pack may be, days */
  readonly checkedWithinDays: number;
}
