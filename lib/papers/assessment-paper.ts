import type { Venue } from '@/lib/core/answers/venue';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { actionSection } from './assessment/actions';
import { answersAnnex, incidentsAnnex, packsAnnex } from './assessment/annexes';
import { basisSection } from './assessment/basis';
import { controlSection } from './assessment/controls';
import { coverBlocks } from './assessment/cover';
import type { AssessmentFacts } from './assessment/facts';
import { openQuestions } from './assessment/open-questions';
import { recordSection } from './assessment/records';
import { responseSections } from './assessment/response';
import { riskSection } from './assessment/risks';
import { roomSection } from './assessment/room';
import { scopeSection, validitySection } from './assessment/scope';
import { screeningSection } from './assessment/screening';
import { stopSection } from './assessment/stops';
import type { Paper } from './paper';

/**
 * The paper of an assessment, in the order an officer reads it: what it comes to, who answers for it and how
 * long it holds, what forbids starting, the risks, what is done, the room, what is not known, the pages for when
 * something happens, and the annexes.
 * @param facts complete; nothing is looked up, so the same facts give the same paper
 */
export function assessmentPaper(facts: AssessmentFacts): Paper {
  const venue = resolveVenue(facts.content, facts.document);
  return {
    kind: 'assessment',
    number: facts.number,
    title: 'Battery fire risk assessment',
    subtitle: `${facts.place}. ${facts.school.name}. ${facts.season}. Version ${facts.version}, ${facts.madeOn}.`,
    format: facts.format,
    language: facts.language,
    author: facts.school.name,
    madeAt: facts.madeAt,
    fingerprint: facts.fingerprint,
    verifyAt: facts.verifyAt,
    twinAt: facts.twinAt,
    dialled: numbersOf(facts, venue),
    cover: coverBlocks(facts),
    sections: [
      scopeSection(facts),
      validitySection(facts),
      stopSection(facts),
      riskSection(facts),
      actionSection(facts),
      controlSection(facts, venue.states),
      roomSection(facts, venue),
      screeningSection(facts),
      openQuestions(facts),
      recordSection(facts),
      ...responseSections(facts, venue),
      packsAnnex(facts),
      incidentsAnnex(facts),
      answersAnnex(facts),
      basisSection(facts),
    ],
    signatures: [
      { field: 'Preparer', title: 'Prepared by', name: facts.preparer.name, post: facts.preparer.post },
      { field: 'Officer', title: 'Checked and signed by', name: facts.officer.name, post: facts.officer.post },
    ],
  };
}

/** The telephone numbers of the facts and of the answers, each once. */
function numbersOf({ content, preparer, officer }: AssessmentFacts, { inputs }: Venue): readonly string[] {
  const asked = content.questions.flatMap((question) => (question.kind === 'text' && question.field.asks === 'telephone number' ? [inputs.get(question.field.input)] : []));
  return [...new Set([preparer.telephone, officer.telephone, ...asked].flatMap((number) => (typeof number === 'string' && number !== '' ? [number] : [])))];
}
