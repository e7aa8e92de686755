import { parseArgs } from 'node:util';

/** What the command was asked to do, or why it cannot be done. */
export type ScoreArguments =
  | { readonly kind: 'score'; readonly source: string; readonly text: boolean; readonly seed: number | undefined; readonly draws: number; readonly edition: number | undefined }
  | { readonly kind: 'help' }
  | { readonly kind: 'refused'; readonly reason: string };

export const HELP = `Scores an assessment of a venue.

  npm run --silent score -- assessment.json          result as JSON
  npm run --silent score -- assessment.json --text   result as a table to read
  npm run --silent score -- - < assessment.json      reads standard input

  --text      a table for a terminal of 80 columns instead of JSON
  --seed N    seed of the random stream, 0 to 4294967295; otherwise the
              document's own, otherwise taken from the fingerprint of its input
  --draws N   number of draws, 100 to 1000000; 4000 when not given
  --edition N edition of the content to score with; the one in force when not
              given, also for a document that was written for an older one
  --help      this text

Exit code 0: scored. 2: the document or the command has faults; each stands on
its own line of standard error, with its place and what would be right.`;

const DEFAULT_DRAWS = 4000;
const RANGES = { seed: [0, 4_294_967_295], draws: [100, 1_000_000], edition: [1, 999] } as const;
type Numbered = keyof typeof RANGES;
type Given = { text: boolean } & { [Name in Numbered]?: number };
const OPTIONS = {
  text: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  seed: { type: 'string' },
  draws: { type: 'string' },
  edition: { type: 'string' },
} as const;

/** Reads the words behind the command. */
export function scoreArguments(words: readonly string[]): ScoreArguments {
  const { tokens } = parseArgs({ args: [...words], options: OPTIONS, strict: false, allowPositionals: true, tokens: true });
  const sources: string[] = [];
  const given: Given = { text: false };
  for (const token of tokens) {
    if (token.kind === 'positional') sources.push(token.value);
    if (token.kind !== 'option') continue;
    if (token.name === 'help') return { kind: 'help' };
    const reason = takeOption(given, token.name, token.rawName, token.value);
    if (reason !== undefined) return { kind: 'refused', reason };
  }
  const [source] = sources;
  if (source === undefined) return { kind: 'refused', reason: 'Which assessment? Give a file, or - for standard input. See --help.' };
  if (sources.length > 1) return { kind: 'refused', reason: `One assessment at a time, not ${sources.length}.` };
  return { kind: 'score', source, text: given.text, seed: given.seed, draws: given.draws ?? DEFAULT_DRAWS, edition: given.edition };
}

const isNumbered = (name: string): name is Numbered => Object.hasOwn(RANGES, name);

/** @returns why the option cannot be taken, or undefined when it was */
function takeOption(given: Given, name: string, shown: string, value: string | undefined): string | undefined {
  if (name === 'text') {
    given.text = true;
    return value === undefined ? undefined : '--text takes no value.';
  }
  if (!isNumbered(name)) return `There is no option ${shown}. See --help.`;
  const [least, most] = RANGES[name];
  const number = /^\d{1,10}$/.test(value ?? '') ? Number(value) : Number.NaN;
  if (!(number >= least && number <= most)) return `--${name} wants a whole number from ${least} to ${most}${value === undefined ? '' : `, not ${JSON.stringify(value)}`}.`;
  given[name] = number;
  return undefined;
}
