import { editions } from '@/lib/content/editions';
import type { Content, Question } from '@/lib/content/model';
import type { Resolution } from '@/lib/questionnaire/resolve';
import type { Assessment } from '../assessment-schema';
import type { DocumentRemark } from './remark';

/** A document of an older edition is read with a newer one: what it could not say counts as not answered. */
export function olderEditionRemarks({ contentVersion, answers, notSureTicks = {} }: Assessment, content: Content, { path, missing }: Resolution): readonly DocumentRemark[] {
  const older = editions.find((edition) => edition.content.version === contentVersion);
  if (older === undefined || older.content.version === content.version) return [];
  const before = new Set(older.content.questions.map(({ id }) => id));
  const questions = missing.filter((id) => !before.has(id)).length;
  const lines = path.filter(({ id }) => Array.isArray(answers[id]))
    .flatMap((question) => linesAfter(question, older.edition).filter((line) => !(notSureTicks[question.id] ?? []).includes(line))).length;
  const open = [...counted(questions, 'question'), ...counted(lines, 'line of its lists', 'lines of its lists')].join(' and ');
  const what = open === '' ? 'everything asked since then is answered' : `${open} that apply here were not there when it was written and count as not answered`;
  return [{ path: '$.contentVersion', remark: `is of edition ${older.edition}; it is read with edition ${content.edition ?? 1}: ${what}` }];
}

function linesAfter(question: Question, edition: number): readonly string[] {
  return question.kind === 'ticks' ? question.options.filter(({ newIn = 1 }) => newIn > edition).map(({ id }) => id) : [];
}

function counted(count: number, one: string, many = `${one}s`): readonly string[] {
  return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
}
