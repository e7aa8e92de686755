import type { Content } from '@/lib/content/model';
import type { ScoreResult } from '@/lib/core/result';
import { whole } from '@/lib/wording/numbers';
import { assumedLines, doubtLines } from './text/doubt';
import { firstActionLines } from './text/first-actions';
import { hanging, heading, PAGE_WIDTH, wrap } from './text/layout';
import { rankingLines } from './text/ranking';
import { smokeLines } from './text/smoke';
import { stopLines } from './text/stops';
import { verdictLines } from './text/verdict';

/** Something odd about the document, with its place, that did not keep it from being scored. */
export interface TextRemark { readonly path: string; readonly remark: string }

/**
 * The result as a person reads it on a terminal: verdict, stop conditions, ranking, what to do first, what is not
 * known, smoke, assumptions, caution. No line is wider than 80 columns.
 * @param content the edition the result was computed with; it has the words for money
 * @returns the text with a line break at its end
 */
export function textTable(result: ScoreResult, content: Content, remarks: readonly TextRemark[] = []): string {
  const lines = [
    ...verdictLines(result),
    ...stopLines(result, content),
    ...rankingLines(result, content),
    ...firstActionLines(result, content),
    ...doubtLines(result),
    ...smokeLines(result),
    ...assumedLines(result),
    ...remarkLines(remarks),
    '',
    ...wrap(reference(result), PAGE_WIDTH),
    ...wrap(result.note, PAGE_WIDTH),
  ];
  return `${lines.map((line) => line.trimEnd()).join('\n')}\n`;
}

function remarkLines(remarks: readonly TextRemark[]): readonly string[] {
  return remarks.length === 0 ? [] : [...heading('Remarks on the document'), ...remarks.flatMap(({ path, remark }) => hanging(' -  ', `${path} ${remark}`))];
}

function reference({ engineVersion, contentVersion, seed, inputHash, draws }: ScoreResult): string {
  return `Engine ${engineVersion}, content ${contentVersion}, input ${inputHash.slice(0, 12)}, seed ${seed}, ${whole(draws)} draws.`;
}
