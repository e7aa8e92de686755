import { parseArgs } from 'node:util';
import { contentByEdition, currentContent, editions } from '@/lib/content/editions';
import { endQuietlyOnClosedPipe } from './closed-pipe';

const HELP = `Prints the domain content as one JSON document.

  npm run --silent content                  the edition in force
  npm run --silent content -- --edition 1   an older one, by number`;

/** @returns the exit code: 0 printed, 2 asked for in a way that cannot be answered */
function main(words: readonly string[]): number {
  const { edition, help } = readWords(words);
  if (help) return print(HELP);
  if (edition === undefined) return print(JSON.stringify(currentContent, null, 1));
  const content = /^[1-9]\d*$/.test(edition) ? contentByEdition(Number(edition)) : undefined;
  if (content !== undefined) return print(JSON.stringify(content, null, 1));
  return refuse(`There is no edition ${JSON.stringify(edition)}. There is: ${editions.map((known) => known.edition).join(', ')}.`);
}

function readWords(words: readonly string[]): { edition?: string; help?: boolean } {
  return parseArgs({ args: [...words], options: { edition: { type: 'string' }, help: { type: 'boolean' } } }).values;
}

function print(text: string): number {
  process.stdout.write(`${text}\n`);
  return 0;
}

function refuse(reason: string): number {
  process.stderr.write(`${reason}\n`);
  return 2;
}

endQuietlyOnClosedPipe();
try {
  process.exitCode = main(process.argv.slice(2));
} catch (error) {
  process.exitCode = refuse(error instanceof Error ? error.message : String(error));
}
