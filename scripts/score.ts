import { contentByEdition, currentContent, editions } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';
import { score } from '@/lib/core/score';
import { seedFromHash } from '@/lib/interchange/input-hash';
import { faultInWords } from '@/lib/interchange/json/fault';
import { readAssessment } from '@/lib/interchange/read-assessment';
import { printedInputs } from '@/lib/questionnaire/printed-inputs';
import { textTable } from '@/lib/report/text-table';
import { readSource } from './read-source';
import { HELP, type ScoreArguments, scoreArguments } from './score-arguments';
import { endQuietlyOnClosedPipe } from './closed-pipe';

const FAULTY = 2;

/** @returns the exit code */
async function main(words: readonly string[]): Promise<number> {
  const request = scoreArguments(words);
  if (request.kind === 'help') return print(HELP);
  if (request.kind === 'refused') return refuse([request.reason]);
  const edition = request.edition === undefined ? currentContent : contentByEdition(request.edition);
  if (edition === undefined) return refuse([`There is no edition ${request.edition}. There is: ${editions.map((known) => known.edition).join(', ')}.`]);
  const source = await readSource(request.source);
  return source.ok ? scoreText(source.text, edition, request) : refuse([source.reason]);
}

function scoreText(text: string, content: Content, request: Extract<ScoreArguments, { kind: 'score' }>): number {
  const read = readAssessment(text, content);
  if (!read.ok) return refuse(read.faults.map(faultInWords));
  const { document, inputHash, remarks } = read;
  const seed = request.seed ?? document.seed ?? seedFromHash(inputHash);
  const result = score(content, document, { seed, draws: request.draws, inputHash });
  return print(request.text ? textTable(result, content, { remarks, printed: printedInputs(content, document) }).trimEnd() : JSON.stringify(result, null, 1));
}

function print(text: string): number {
  process.stdout.write(`${text}\n`);
  return 0;
}

function refuse(lines: readonly string[]): number {
  process.stderr.write(`${lines.join('\n')}\n`);
  return FAULTY;
}

endQuietlyOnClosedPipe();
process.exitCode = await main(process.argv.slice(2));
