import type { GuidanceWords } from '@/lib/content/fill-guidance';
import type { Content } from '@/lib/content/model';
import type { GradeOrNone } from '@/lib/core/result';
import type { Signer } from '../assessment/facts';

/** What an area of a site is used for, as the register of places names it. */
type AreaUse = 'charging' | 'storage' | 'arena' | 'isolation' | 'disposal';

/** What stands on a cover for its state: what is made for signature holds once both have signed. */
type EventPaperState = 'draft' | 'for signature';

/** A responsible adult, with all parts they play. Names of adults only: of students nothing stands on a paper. */
export interface EventAdultFact {
  readonly name: string;
  /** in words: leads; may stop the match; first aid; drives; contact at the venue */
  readonly parts: readonly string[];
  /** as it is dialled; null when nobody wrote one, and the paper then says so */
  readonly phone: string | null;
  /** may stop the match: printed strong wherever people look for it */
  readonly mayStop: boolean;
  readonly firstAid: boolean;
}

/** One pack that travels. */
export interface EventPackFact {
  readonly label: string;
  /** "4S 850 mAh" */
  readonly kind: string;
  /** null where neither printed nor to be worked out; the paper says so, and the total says that it is without it */
  readonly energyWh: number | null;
  /** full voltage of a cell, in words */
  readonly fullVoltage: string;
  readonly state: string;
  /** in words: "24 November 2026, fit", or "none" */
  readonly lastCheck: string;
  /** "3.79 to 3.81 V a cell", or "not known" */
  readonly charge: string;
  /** how it may fly, in words; null when nobody flies */
  readonly air: string | null;
}

/** A part of the site as it is known. Metres; null is "not known", never 0. */
export interface EventAreaFact {
  readonly use: AreaUse;
  readonly name: string;
  readonly outdoors: boolean;
  readonly lengthM: number | null;
  readonly widthM: number | null;
  readonly heightM: number | null;
  /** doors, windows, extract in words; null when nobody said */
  readonly openings: string | null;
  /** how air is renewed, in words with its range; null when not known */
  readonly air: string | null;
  readonly exits: number | null;
  readonly evacuationS: number | null;
  readonly surface: string | null;
  readonly detectors: string | null;
  readonly fuelLoad: string | null;
  readonly peoplePresent: number | null;
  readonly personDistanceM: number | null;
  readonly combustibleDistanceM: number | null;
  readonly clearHeightM: number | null;
  readonly notes: string | null;
}

/** One line of the check before it leaves, as it stood when the paper was made. */
export interface EventCheckFact {
  readonly id: string;
  readonly group: string;
  readonly state: 'ok' | 'failing' | 'not known' | 'accepted';
  readonly words: string;
  /** of an accepted one: why, and who agreed; else null */
  readonly accepted: { readonly reason: string; readonly by: string } | null;
}

/** A risk that remains by the site's signed assessment. */
export interface EventRiskFact {
  readonly id: string;
  readonly title: string;
  readonly grade: GradeOrNone;
  /** the matrix's own word for the grade */
  readonly gradeWord: string;
  readonly couldKill: boolean;
}

/** The signed assessment the event was held against; null when there is none, which the paper then says first. */
export interface EventAssessmentFact {
  readonly number: string;
  readonly title: string;
  readonly version: number;
  /** in words */
  readonly signedOn: string;
  readonly holdsUntil: string;
  /** where it stood when the paper was made: "in force", "suspended", … */
  readonly force: string;
  readonly covers: { readonly packs: number; readonly storedWh: number; readonly people: number };
  /** all that apply, by rank, worst first */
  readonly risks: readonly EventRiskFact[];
  /** stop conditions the officer accepted in writing for it, in words */
  readonly accepted: readonly string[];
}

/** Something the venue provides or the team brings: whether it stands, and what is said of it in a word or two. */
export interface EventConditionFact { readonly id: string; readonly words: string; readonly stands: boolean; readonly said: string }

/** A name and what was written for it; null is printed as NOT FILLED IN. */
export interface EventLineFact { readonly id: string; readonly name: string; readonly value: string | null }

/** Everything the papers of one event are made of: dates, measures and choices in words already, nothing else is read. */
export interface EventFacts {
  readonly content: Content;
  /** the venue's number, address and meeting places for the guidance texts, filled by `fillGuidance` */
  readonly guidance: GuidanceWords;

  // The paper itself.
  readonly number: string;
  readonly state: EventPaperState;
  readonly format: 'A4' | 'LETTER';
  readonly language: string;
  /** ISO */
  readonly madeAt: string;
  readonly madeOn: string;
  readonly fingerprint: string;
  readonly verifyAt: string;
  /** where the same words stand as a page, for those who read with ears or fingers; printed on the first page of each paper */
  readonly readAt: { readonly event: string; readonly 'response card': string; readonly 'pack list': string; readonly briefing: string };
  /** what lengths are printed in; the drawing is to scale in both */
  readonly units: 'metric' | 'us';
  readonly preparer: Signer;
  readonly officer: Signer;

  // What, where, when.
  readonly school: { readonly name: string; readonly address: string; readonly officerPhone: string | null };
  readonly title: string;
  /** "Saturday 5 December 2026, 09:00 to 17:30 GMT" */
  readonly when: string;
  /** by what day it is over, in words: the file is for this date and place only */
  readonly until: string;
  readonly site: {
    readonly name: string;
    readonly kind: 'own' | 'away';
    readonly address: string;
    readonly emergencyNumber: string | null;
    readonly meetingPlace: string | null;
    readonly secondMeetingPlace: string | null;
    /** who has the keys, with the telephone */
    readonly caretaker: string | null;
    readonly caretakerPhone: string | null;
    readonly notes: string | null;
    readonly areas: readonly EventAreaFact[];
    /** who of the venue described it by a link, and when, in words; null when the school did */
    readonly describedBy: string | null;
  };
  readonly teams: number | null;
  readonly people: number | null;
  readonly spectators: number | null;
  readonly adults: readonly EventAdultFact[];
  readonly schedule: readonly { readonly time: string; readonly what: string }[];

  // What it rests on.
  readonly assessment: EventAssessmentFact | null;
  readonly checks: readonly EventCheckFact[];

  // The packs.
  readonly packs: readonly EventPackFact[];
  /** of those whose energy is known */
  readonly totalWh: number;
  readonly packsWithoutEnergy: number;

  // The venue and the day.
  /** the venue's own alarm; who shares the hall and whether they were told; smoke detection that day; sprinklers … */
  readonly venue: readonly EventLineFact[];
  readonly provides: readonly EventConditionFact[];
  readonly brings: readonly EventConditionFact[];
  /** whether packs are charged there, where, how many at once, on which circuit */
  readonly charging: readonly EventLineFact[];
  /** what becomes of a damaged pack there; where packs are overnight */
  readonly damaged: readonly EventLineFact[];
  readonly night: readonly EventLineFact[];

  // The way there.
  readonly travel: {
    readonly byRoad: boolean;
    readonly byAir: boolean;
    readonly road: readonly EventLineFact[];
    readonly air: readonly EventLineFact[];
    /** the rules the air part was held to, with edition and whether they were read or are from memory */
    readonly airRules: readonly { readonly rule: string; readonly source: string; readonly read: 'read' | 'a copy was read' | 'from memory' }[];
  };
}
