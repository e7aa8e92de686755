import type { Content } from '@/lib/content/model';

/** One text that a person reads, and where it stands. */
export interface PlacedText { readonly where: string; readonly text: string }

const placed = (where: string, ...texts: readonly (string | undefined)[]): readonly PlacedText[] =>
  texts.flatMap((text) => (text === undefined ? [] : [{ where, text }]));

/** What a teacher reads while answering: titles, questions, answers, fields. */
export function questionTexts({ sections, pages = [], questions }: Content): readonly PlacedText[] {
  return [
    ...[...sections, ...pages].flatMap(({ id, title }) => placed(id, title)),
    ...questions.flatMap((question) => [
      ...placed(question.id, question.text, question.why, question.good),
      ...('options' in question ? question.options.flatMap((option) => (option.earlier === true ? [] : placed(question.id, option.label))) : []),
      ...(question.kind === 'ticks' ? question.options.flatMap((line) => placed(question.id, line.partly.label)) : []),
      ...(question.kind === 'number' ? question.fields.flatMap((field) => (field.earlier === undefined ? placed(question.id, field.label) : [])) : []),
    ]),
  ];
}

/** What is read in a result: controls, what may go wrong, stop conditions. */
export function resultTexts({ controls, scenarios, stops }: Content): readonly PlacedText[] {
  return [
    ...controls.flatMap(({ id, title, goodLooksLike }) => placed(id, title, goodLooksLike)),
    ...scenarios.flatMap(({ id, title, description, branches }) => placed(id, title, description, ...branches.map((branch) => branch.title))),
    ...stops.flatMap(({ id, title, why, settles, acceptable }) => placed(id, title, why, settles, acceptable?.text, acceptable?.kind === 'until' ? acceptable.replacedBy : undefined)),
  ];
}
