import type { Content, Question } from '@/lib/content/model';
import { documentOf, type VersionRecord } from '@/lib/assessments/version';
import type { PaperMaterial } from '@/lib/db/assessments/paper-material';
import type { PaperAnswer } from '@/lib/papers/assessment/facts';
import { resolve } from '@/lib/questionnaire/resolve';
import { answerWords } from '@/lib/wording/answers';

/** Every question of the edition with what was answered, as it stands on the paper. */
export function answersOnPaper(content: Content, version: VersionRecord, evidence: PaperMaterial['evidence']): readonly PaperAnswer[] {
  const document = documentOf(version);
  const { path } = resolve(content, document.answers, document.inputs);
  const asked = new Set(path.map((question) => question.id));
  const kept = new Map(version.answers.map((answer) => [answer.questionId, answer]));
  return content.questions.map((question): PaperAnswer => {
    const answer = kept.get(question.id);
    const words = answerWords(question, answer?.value, answer?.notSureTicks ?? []);
    return {
      id: question.id,
      section: question.section,
      question: question.text,
      answer: words,
      standing: standingOf(question, asked, words),
      note: answer?.note ?? '',
      evidence: evidence.filter((one) => one.questionId === question.id).map((one) => `${one.caption ?? 'photo'} (${one.file.sha256.slice(0, 8)})`).join(', '),
      toFindOut: answer?.waitsFor ?? '',
    };
  });
}

function standingOf(question: Question, asked: ReadonlySet<string>, words: string): PaperAnswer['standing'] {
  if (!asked.has(question.id)) return 'does not apply';
  if (words === '') return 'not answered';
  return words === 'not sure' ? 'not sure' : 'answered';
}
