/** What a school fills in; stands in a line as `{number}`, `{meetingPoint}` and so on. */
export type GuidanceFieldId = 'number' | 'meetingPoint' | 'secondMeetingPoint' | 'siteAddress' | 'officerPhone';

export interface GuidanceField {
  readonly id: GuidanceFieldId;
  readonly title: string;
  /** the input of the edition that holds it, null when it is kept with the school and not with an assessment */
  readonly input: string | null;
  /** said in its place when nothing usable is filled in; fits the same sentences */
  readonly whenNotSet: string;
  /** digits a value needs to be usable: 3 for what is dialled, else 0 */
  readonly minDigits: number;
}

export type GuidanceAudience = 'everybody' | 'trained adult' | 'organiser' | 'officer' | 'driver' | 'visitor';

/** The words that carry, then the rest. A reader in a hurry reads the leads alone. */
export interface GuidanceLine { readonly lead: string; readonly text?: string }

/** What must never be shown together with a text: another text, or something else on the screen or page. */
export type NeverBeside =
  | { readonly guidance: string; readonly why: string }
  | { readonly shown: string; readonly why: string };

/** What a part of a text rests on. */
export type GuidanceBasis =
  | { readonly kind: 'published'; readonly source: string; readonly carries: string }
  | { readonly kind: 'common practice, no source' | 'our judgement'; readonly carries: string };

/** What to do, and what not, in one situation. */
export interface GuidanceText {
  readonly id: string;
  readonly title: string;
  /** counts up with each change of this text, from 1 */
  readonly version: number;
  readonly when: string;
  readonly audience: readonly GuidanceAudience[];
  readonly form: 'steps' | 'paragraphs';
  readonly lines: readonly GuidanceLine[];
  readonly neverBeside: readonly NeverBeside[];
  readonly confirm: 'to be confirmed by the local fire service and first-aid trainer';
  readonly basis: readonly GuidanceBasis[];
}

/** The guidance texts of an edition, and the fields a school fills in for them. */
export interface Guidance { readonly fields: readonly GuidanceField[]; readonly texts: readonly GuidanceText[] }
