import type { AnswerOption, Content, Question } from '../model';
import { controlsSetBy, inputsSetBy } from '../question-sets';
import { choiceFaults, lineFaults, numberFaults } from './asked-fields';
import { conditionFaults } from './conditions';
import { type ContentFault, idFaults, idsOf, kindFaults, must } from './fault';

/** Questions in unknown sections, that wait for later answers, or whose options leave a control open. */
export function questionFaults(content: Content): readonly ContentFault[] {
  const sections = idsOf(content.sections);
  const asked = new Set<string>();
  return content.questions.flatMap((question) => {
    const where = `question ${question.id}`;
    const faults = [
      ...must(sections.has(question.section), where, `section ${question.section} is unknown`),
      ...kindFaults(question.source, where),
      ...(question.showIf === undefined ? [] : conditionFaults(content, question.showIf, where, { askedBefore: asked, derivedAllowed: false })),
      ...must(question.hiddenAs === undefined || question.showIf !== undefined, where, 'says what it is when hidden, and is never hidden'),
      ...inputsSetBy(question).flatMap((input) => must(idsOf(content.inputs).has(input), where, `input ${input} is unknown`)),
      ...kindOfQuestionFaults(content, question, where),
    ];
    for (const input of inputsSetBy(question)) asked.add(input);
    return faults;
  });
}

function kindOfQuestionFaults(content: Content, question: Question, where: string): readonly ContentFault[] {
  if (question.kind === 'text') return [];
  if (question.kind === 'number') return numberFaults(content, question, where);
  const controls = idsOf(content.controls);
  return [
    ...idFaults(`${where} options`, question.options),
    ...controlsSetBy(question).flatMap((control) => must(controls.has(control), where, `control ${control} is unknown`)),
    ...(question.kind === 'choice' ? [...question.options.flatMap((option) => openFaults(question, option, where)), ...choiceFaults(content, question, where)] : []),
    ...(question.kind === 'ticks' ? lineFaults(question, where) : []),
  ];
}

/** Whatever is chosen, each control of a choice must end up in some state. */
function openFaults(question: Question, option: AnswerOption, where: string): readonly ContentFault[] {
  return controlsSetBy(question).flatMap((control) =>
    must(Object.hasOwn(option.sets.controls, control), where, `option ${option.id} leaves ${control} open`));
}
