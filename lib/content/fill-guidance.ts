import type { Guidance, GuidanceAudience, GuidanceFieldId, GuidanceLine, GuidanceText } from './model';

/** What stands in a text for one field. Never empty: `set` says whether it is the school's own. */
interface FieldWords { readonly words: string; readonly set: boolean }
export type GuidanceWords = Readonly<Record<GuidanceFieldId, FieldWords>>;

export interface FilledGuidance {
  readonly id: string;
  readonly title: string;
  readonly when: string;
  readonly audience: readonly GuidanceAudience[];
  readonly form: GuidanceText['form'];
  readonly lines: readonly GuidanceLine[];
  readonly confirm: string;
  /** fields that the text needs and nobody filled in: shown as something to be done */
  readonly notSet: readonly GuidanceFieldId[];
}

const PLACEHOLDER = /\{([a-zA-Z]*)\}/g;

/**
 * The words for each field. A value that is missing, blank, or has too few digits to be dialled
 * ("on the card by the door") is not set; then the words of the edition stand for it.
 * @param values what the school filled in, as far as it did
 */
export function guidanceWords(fields: Guidance['fields'], values: Readonly<Partial<Record<GuidanceFieldId, string>>>): GuidanceWords {
  const words = (id: GuidanceFieldId): FieldWords => {
    const field = fields.find((known) => known.id === id);
    if (field === undefined) throw new Error(`the guidance has no field ${id}`);
    // A value ends with the sentence it stands in, and that has its own full stop.
    const value = (values[id] ?? '').trim().replace(/\.+$/, '').replace(/\s+/g, ' ');
    const usable = value !== '' && value.replace(/\D/g, '').length >= field.minDigits;
    return usable ? { words: value, set: true } : { words: field.whenNotSet, set: false };
  };
  return {
    number: words('number'),
    meetingPoint: words('meetingPoint'),
    secondMeetingPoint: words('secondMeetingPoint'),
    siteAddress: words('siteAddress'),
    officerPhone: words('officerPhone'),
  };
}

/**
 * One text as people read it, with the school's words in it or, where there are none, with what is said then.
 * @param words out of `guidanceWords`
 * @throws when the text names a field that does not exist: checked content never does
 */
export function fillGuidance(text: GuidanceText, words: GuidanceWords): FilledGuidance {
  const notSet = new Set<GuidanceFieldId>();
  const fill = (line: string): string => capital(line.replace(PLACEHOLDER, (_, id: string) => {
    if (!isField(id, words)) throw new Error(`guidance ${text.id} names an unknown field {${id}}`);
    if (!words[id].set) notSet.add(id);
    return words[id].words;
  }));
  const lines = text.lines.map((line) => (line.text === undefined ? { lead: fill(line.lead) } : { lead: fill(line.lead), text: fill(line.text) }));
  return { id: text.id, title: text.title, when: text.when, audience: text.audience, form: text.form, lines, confirm: text.confirm, notSet: [...notSet] };
}

/** @returns the placeholders in a line, in the order they stand, known fields or not */
export function placeholdersOf(line: GuidanceLine): readonly string[] {
  return [...`${line.lead} ${line.text ?? ''}`.matchAll(PLACEHOLDER)].map(([, id]) => id ?? '');
}

function isField(id: string, words: GuidanceWords): id is GuidanceFieldId { return Object.hasOwn(words, id); }

/** A line may begin with a field, whose words stand mostly in the middle of a sentence. */
function capital(line: string): string { return line.charAt(0).toUpperCase() + line.slice(1); }
