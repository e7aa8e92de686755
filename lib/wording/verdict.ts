import type { GradeOrNone } from '@/lib/core/result';

export interface Verdict {
  /** one sentence with the answer; the heading of the page */
  readonly sentence: string;
  /** what stands behind it, in one or two sentences */
  readonly why: string;
  /** whether a person is needed now */
  readonly presses: boolean;
}

const WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** A small count as a word, a larger one in digits. */
const countWord = (count: number): string => WORDS[count] ?? String(count);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const some = (count: number, one: string, many: string): string => `${countWord(count)} ${count === 1 ? one : many}`;

interface Judged {
  readonly stops: readonly unknown[];
  readonly risks: readonly { readonly grade: GradeOrNone }[];
  /** how many risks have an end that could kill; null while that is not worked out yet */
  readonly deadly: number | null;
}

/**
 * The answer first: a stop says do not start, whatever the grades; without a stop, the worst grade speaks.
 */
export function verdictOf({ stops, risks, deadly }: Judged): Verdict {
  const worst = worstCounted(risks);
  const grades = gradeSentence(worst);
  const kill = killSentence(deadly);
  if (stops.length > 0) {
    const holding = some(stops.length, 'condition stops', 'conditions stop');
    return { sentence: `Do not start. ${capital(holding)} it.`, why: joined([grades, kill]), presses: true };
  }
  if (worst.grade === 'extreme') {
    return { sentence: `Do not start. ${capital(some(worst.count, 'risk is', 'risks are'))} extreme.`, why: joined(['No stop condition holds.', kill]), presses: true };
  }
  if (worst.grade === 'high') {
    return { sentence: `No stop condition holds. ${capital(some(worst.count, 'risk grades', 'risks grade'))} high.`, why: joined(['High asks for the officer’s consent and a date for what is to be done.', kill]), presses: false };
  }
  return { sentence: 'No stop condition holds, and no risk grades high.', why: joined([grades, kill]), presses: false };
}

function worstCounted(risks: Judged['risks']): { readonly grade: GradeOrNone; readonly count: number } {
  for (const grade of ['extreme', 'high', 'moderate', 'low'] as const) {
    const count = risks.filter((risk) => risk.grade === grade).length;
    if (count > 0) return { grade, count };
  }
  return { grade: 'not applicable', count: risks.length };
}

function gradeSentence({ grade, count }: { readonly grade: GradeOrNone; readonly count: number }): string {
  if (grade === 'not applicable') return 'Nothing here is exposed to any of the risks.';
  return `${capital(some(count, `risk grades ${grade}`, `risks grade ${grade}`))}.`;
}

function killSentence(deadly: number | null): string {
  return deadly === null || deadly === 0 ? '' : `${capital(some(deadly, 'has', 'have'))} an end that could kill.`;
}

const joined = (sentences: readonly string[]): string => sentences.filter((sentence) => sentence !== '').join(' ');
