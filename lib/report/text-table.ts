import type { Content } from '@/lib/content/model';
import type { ScoreResult } from '@/lib/core/result';
import { whole } from '@/lib/wording/numbers';
import { assumedLines, doubtLines } from './text/doubt';
import { firstActionLines } from './text/first-actions';
import { hanging, heading, PAGE_WIDTH, wrap } from './text/layout';
import { type PrintedLine, printedLines } from './text/printed';
import { rankingLines } from './text/ranking';
import { smokeLines } from './text/smoke';
import { stopLines } from './text/stops';
import { verdictLines } from './text/verdict';

/** Something odd about the document, with its place, that did not keep it from being scored. */
export interface TextRemark { readonly path: string; readonly remark: string }

export interface TextNotes { readonly remarks?: readonly TextRemark[]; readonly printed?: readonly PrintedLine[] }

/**
 * The result as a person reads it on a terminal: verdict, stop conditions, ranking, what to do first, what is not
 * known, smoke, assumptions, what is only printed, caution. No line is wider than 80 columns.
 * @param content the edition the result was computed with; it has the words for money and for accepting a stop
 * @param notes what the document itself has to add
 * @returns the text with a line break at its end
 */
export function textTable(result: ScoreResult, content: Content, { remarks = [], printed = [] }: TextNotes = {}): string {
  const lines = [
    ...verdictLines(result),
    ...stopLines(result, content),
    ...rankingLines(result, content),
    ...firstActionLines(result, content),
    ...doubtLines(result),
    ...smokeLines(result),
    ...assumedLines(result, content),
    ...printedLines(printed),
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

function reference({ engineVersion, contentVersion, contentEdition, seed, inputHash, draws }: ScoreResult): string {
  return `Engine ${engineVersion}, content edition ${contentEdition} (${contentVersion}), input ${inputHash.slice(0, 12)}, seed ${seed}, ${whole(draws)} draws.`;
}
