import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { score } from '@/lib/core/score';
import { readAssessment } from '@/lib/interchange/read-assessment';
import { printedInputs } from '@/lib/questionnaire/printed-inputs';
import { displayWidth } from '@/lib/report/text/display-width';
import { textTable } from '@/lib/report/text-table';
import { smallDocument } from '@/tests/support/assessment-text';

const EXAMPLES = ['good-hall', 'ordinary-classroom', 'bad-store'];

function tableOf(text: string) {
  const read = readAssessment(text, edition2);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const result = score(edition2, read.document, { seed: 7, draws: 200, inputHash: read.inputHash });
  const table = textTable(result, edition2, { remarks: read.remarks, printed: printedInputs(edition2, read.document) });
  return { result, table, flat: table.replaceAll(/\s+/g, ' ') };
}
const example = (name: string) => tableOf(readFileSync(`public/examples/${name}.json`, 'utf8'));
const small = (answers: Record<string, unknown>) => tableOf(JSON.stringify(smallDocument({ answers })));

describe('the table of the second edition', () => {
  it.each(EXAMPLES)('of %s has no line wider than 80 columns, and names the edition', (name) => {
    const { table, flat } = example(name);
    expect(table.split('\n').filter((line) => displayWidth(line) > 80)).toEqual([]);
    expect(flat).toContain('content edition 2 (2.0.0)');
  });

  it('says of each stop condition whether somebody may accept it', () => {
    const { result, flat } = example('bad-store');
    expect(result.stops.length).toBeGreaterThan(5);
    for (const { id } of result.stops) {
      const acceptable = edition2.stops.find((stop) => stop.id === id)?.acceptable;
      expect(acceptable, id).toBeDefined();
      expect(flat).toContain(`${acceptable?.kind === 'never' ? 'Never accepted.' : acceptable?.kind === 'with-paper' ? 'Accepted with a paper only.' : `Accepted for ${acceptable?.days} days at most`}`);
      expect(flat).toContain(acceptable?.text);
    }
  });

  it('prints what changes no figure, first what nobody has asked or answered', () => {
    const { table, flat } = small({ 'team-limit-asked': 'not-yet', 'response-second': 'the lower gate', 'response-address': 'Mill Lane 4, north gate' });
    const [, ...printed] = table.slice(table.indexOf('PRINTED AS ANSWERED, CHANGES NO FIGURE')).split(/\n (?=[?-] {2})/);
    const asked = edition2.questions.find(({ id }) => id === 'team-limit-asked');
    const notYet = asked?.kind === 'choice' ? asked.options.find(({ id }) => id === 'not-yet')?.label : undefined;
    expect(printed.map((line) => line.replaceAll(/\s+/g, ' '))).toContainEqual(`? ${asked?.text}: ${notYet}`);
    expect(flat).toContain('- second meeting place: the lower gate');
    expect(printed.map((line) => line.startsWith('?'))).toEqual(printed.map((line) => line.startsWith('?')).sort().reverse());
  });

  it('lists such an input there alone, not among what was assumed', () => {
    const { table, result } = small({ 'team-limit-asked': 'not sure' });
    const printed = edition2.inputs.filter((input) => input.printed === true);
    expect(result.assumedInputs.some(({ input }) => printed.some(({ id }) => id === input))).toBe(true);
    const assumed = table.slice(table.indexOf('ASSUMED'), table.indexOf('PRINTED AS ANSWERED'));
    for (const { title } of printed) expect(assumed).not.toContain(title);
  });

  it('says assumed words as a person would', () => {
    expect(small({ 'store-neighbours': 'not sure' }).table).not.toMatch(/: (open|1|0) \(not/);
  });
});
