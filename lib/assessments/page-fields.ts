/*
 * Names of the fields of a page besides those of the questions (lib/questionnaire/field-names). A question's id has no
 * colon, so that none of these can be a question's.
 */

/** The note beside an answer. */
export function noteField(question: string): string { return `note:${question}`; }

/** The revision of the answer that was read when the page was opened; 0 when there was none. */
export function seenField(question: string): string { return `seen:${question}`; }

/** After two wrote at once: `theirs`, or `mine-` and the revision of theirs that was shown. */
export function keepField(question: string): string { return `keep:${question}`; }

/** Ids of the questions that stood on the page. */
export const SHOWN_FIELD = 'shown';

/** Photos that are to stand beside the answer. */
export function photoField(question: string): string { return `photo:${question}`; }

/** The button that takes a photo away; its value is the photo's id. */
export const DROP_FIELD = 'drop';
