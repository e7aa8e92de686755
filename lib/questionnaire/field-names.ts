/*
 * Names of the fields of a form, so that several questions can stand in one: a question's own field has the
 * question's id, its lines, boxes and extra marks have `<question id>.<part>`.
 */

/** @returns the name of the field with the choice, the text, the ticks of a list, or "not sure" for the whole question */
export function answerField(question: string): string {
  return question;
}

/** @returns the name of the field of one line of a page of ticks, or of one box of a number question */
export function partField(question: string, part: string): string {
  return `${question}.${part}`;
}

/** @returns the name of the field with the options of a list that somebody is not sure about, one by one */
export function openTicksField(question: string): string {
  return partField(question, 'not-sure');
}

/** @returns the name of the field of a list that says: looked at, and none of these is true */
export function noneField(question: string): string {
  return partField(question, 'none');
}
