import type { Content, ControlState, DerivedName, NumberField, Question } from '@/lib/content/model';
import type { Answer, AssessmentDocument } from '@/lib/core/document';
import { evaluateCondition } from './condition';
import { resolveExposures } from './resolve-exposures';
import { InputDesk, type WhyUnknown } from './resolve-inputs';
import { type AnswerStanding, statesFrom } from './resolve-states';
import type { Venue } from './venue';

/**
 * The venue that a document describes: questions are read in their order, so that one that depends on an
 * earlier answer is shown or not by that answer, whatever else the document still holds (amendments A5,
 * A45 to A47). States written into the document win last.
 * @param document already checked against the content
 * @returns a value for every input, a state for every control, a figure for every exposure
 */
export function resolveVenue(content: Content, document: AssessmentDocument): Venue {
  const desk = new InputDesk(content, document.inputs ?? {});
  const states = new Map<string, ControlState>();
  const shown = new Set<string>();
  for (const question of content.questions) {
    const applies = question.showIf === undefined || evaluateCondition(question.showIf, contextWhileReading(desk, states));
    if (applies) shown.add(question.id);
    const answer = Object.hasOwn(document.answers, question.id) ? document.answers[question.id] : undefined;
    const standing = standingOf(applies, answer);
    for (const [control, state] of statesFrom(question, standing, answer, document.notSureTicks?.[question.id] ?? [])) states.set(control, state);
    if (standing !== 'hidden') readInputs(desk, question, answer, standing);
  }
  for (const [control, state] of Object.entries(document.states ?? {})) states.set(control, state);
  const inputs = desk.all();
  const countedExposures = document.exposures ?? {};
  const exposures = resolveExposures(content, inputs, countedExposures);
  return { content, inputs, states, exposures, countedExposures, shown, assumedInputs: desk.assumed() };
}

function contextWhileReading(desk: InputDesk, states: ReadonlyMap<string, ControlState>) {
  return {
    input: (id: string) => desk.value(id),
    state: (control: string) => states.get(control) ?? 'not sure',
    derived: (name: DerivedName): number => { throw new Error(`a question cannot depend on ${name}, which is computed from all answers`); },
  };
}

function standingOf(applies: boolean, answer: Answer | undefined): AnswerStanding {
  if (!applies) return 'hidden';
  return answer === undefined || answer === 'not sure' ? 'unknown' : 'answered';
}

function readInputs(desk: InputDesk, question: Question, answer: Answer | undefined, standing: AnswerStanding): void {
  const why: WhyUnknown = answer === 'not sure' ? 'not sure' : 'not answered';
  if (question.kind === 'text') {
    if (standing === 'answered' && typeof answer === 'string') desk.set(question.field.input, answer);
    else desk.setUnknown(question.field.input, why);
    return;
  }
  if (question.kind === 'number') {
    for (const field of question.fields) readField(desk, field, question.fields, answer, standing === 'answered' ? 'field left empty' : why);
    return;
  }
  const inputsOf = new Set(question.options.flatMap((option) => Object.keys(option.sets.inputs)));
  if (standing === 'unknown') { for (const id of inputsOf) desk.setUnknown(id, why); return; }
  const chosen = question.options.filter((option) => option.id === answer || (Array.isArray(answer) && answer.includes(option.id)));
  for (const option of chosen) for (const [id, value] of Object.entries(option.sets.inputs)) desk.set(id, value);
}

function readField(desk: InputDesk, field: NumberField, fields: readonly NumberField[], answer: Answer | undefined, why: WhyUnknown): void {
  const value = figureIn(answer, field.input);
  // what an earlier edition asked here is asked elsewhere now, and that answer counts
  if (field.earlier !== undefined && desk.isSettled(field.input)) return;
  if (value !== undefined) desk.set(field.input, value);
  else if (isMissed(field, fields, answer, why)) desk.setUnknown(field.input, why);
}

const figureIn = (answer: Answer | undefined, input: string): number | undefined => {
  const value = typeof answer === 'object' && !Array.isArray(answer) ? (answer as Readonly<Record<string, unknown>>)[input] : undefined;
  return typeof value === 'number' ? value : undefined;
};

/**
 * Whether an empty field leaves something open. Not where its default is the rule (the energy of a pack,
 * unless one is printed), nor where an earlier edition's field gave what this one asks for in parts.
 */
function isMissed(field: NumberField, fields: readonly NumberField[], answer: Answer | undefined, why: WhyUnknown): boolean {
  if (field.earlier !== undefined) return false;
  if (why === 'field left empty' && (field.mayBeEmpty === true || field.input === 'packWh')) return false;
  return !fields.some((other) => other.earlier?.replaces.includes(field.input) === true && figureIn(answer, other.input) !== undefined);
}
