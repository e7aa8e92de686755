import type { GradeCell, PaperSection } from '../paper';
import { type Block, text } from '../paper';
import { COULD_KILL } from '@/lib/wording/could-kill';
import { gradeRule } from '@/lib/wording/grades';
import type { EventAssessmentFact, EventFacts, EventRiskFact } from './facts';

/** What remains by the site's signed assessment, worst first. Without one nothing is graded, which is said. */
export function riskSection({ assessment }: EventFacts): PaperSection {
  return { id: 'risks', title: 'Risks that remain', blocks: assessment === null ? notAssessed() : assessed(assessment) };
}

function notAssessed(): readonly Block[] {
  return [{ kind: 'notice', presses: true, title: 'Nobody has assessed this place', text: 'No signed assessment stands behind this file, so no risk is graded. Charging and storing wait until one is signed.' }];
}

function assessed(assessment: EventAssessmentFact): readonly Block[] {
  const { number, title, version, signedOn, holdsUntil, force, covers, accepted } = assessment;
  return [
    { kind: 'facts', rows: [
      { name: 'Rests on', value: `assessment ${number}, ${title}, version ${version}`, under: `signed ${signedOn}, holds until ${holdsUntil}; when this was made: ${force}` },
      { name: 'Covers at most', value: `${covers.packs} packs, ${Number(covers.storedWh.toFixed(1))} Wh in the store, ${covers.people} people in the room while packs charge` },
    ] },
    { kind: 'table', caption: 'Risks, most harm first', columns: [{ head: 'Risk', width: 7 }, { head: 'Grade', width: 3 }], rows: assessment.risks.map((risk, index) => [`${index + 1} ${risk.title}`, gradeCell(risk)]), empty: 'Nothing here is exposed to any of the risks.' },
    text((['low', 'moderate', 'high', 'extreme'] as const).map((grade) => `${grade.charAt(0).toUpperCase()}${grade.slice(1)}: ${gradeRule(grade)}`).join(' '), 'quiet'),
    ...(accepted.length === 0 ? [] : [{ kind: 'list' as const, items: accepted.map((words) => ({ lead: 'Accepted in writing:', text: words })) }]),
    text('A grade ranks what is left; it permits nothing. How it was worked out, with its ranges, stands in the assessment.', 'quiet'),
  ];
}

function gradeCell({ grade, gradeWord, couldKill }: EventRiskFact): GradeCell {
  const cell = { grade: grade === 'not applicable' ? 'none' as const : grade, word: gradeWord };
  return couldKill ? { ...cell, note: COULD_KILL } : cell;
}
