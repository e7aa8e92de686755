import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCsv } from '@/lib/csv/read-csv';
import { type CsvColumn, writeCsv } from '@/lib/csv/write-csv';

const COLUMNS: readonly CsvColumn<readonly [string, number | null]>[] = [{ head: 'Label', cell: ([label]) => label }, { head: 'Energy, Wh', cell: ([, energy]) => energy }];

describe('a table on its way to a spreadsheet', () => {
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', ' =HYPERLINK("http://x")', '|cmd', '＝1+1', '\r\n=1'])('runs nothing: %j', (text) => {
    const cell = writeCsv(COLUMNS, [[text, 1]]).split('\r\n').slice(1).join('\r\n');
    expect(cell.replace(/^"/u, '')).toMatch(/^'/u);
  });

  it('writes numbers as numbers, also those below zero, and nothing for what is not known', () => {
    expect(writeCsv(COLUMNS, [['W-01', -1.5], ['W-02', null]])).toBe('\uFEFFLabel,"Energy, Wh"\r\nW-01,-1.5\r\nW-02,');
  });

  it('comes back as it went, whatever stands in it', () => {
    const text = fc.string({ minLength: 1, maxLength: 20 }).map((typed) => typed.trim()).filter((typed) => typed !== '' && !typed.startsWith("'") && !typed.includes('\uFEFF'));
    fc.assert(fc.property(fc.array(text, { minLength: 1, maxLength: 5 }), (labels) => {
      const read = readCsv(writeCsv([{ head: 'Label', cell: (label: string) => label }, { head: 'Number', cell: () => 1 }], labels));
      expect(read.ok && read.table.lines.map(({ cells }) => cells[0])).toEqual(labels);
    }));
  });
});

describe('a table that somebody gives', () => {
  it.each([
    ['commas', 'Label,Capacity\nW-01,850'],
    ['semicolons, as where the comma is decimal', 'Label;Capacity\nW-01;850'],
    ['tabs, as copied from a spreadsheet', 'Label\tCapacity\nW-01\t850'],
    ['a byte order mark, Windows line ends and an empty line', '\uFEFFLabel,Capacity\r\n\r\nW-01,850\r\n'],
  ])('is read with %s', (_, text) => {
    const read = readCsv(text);
    expect(read.ok && { heads: read.table.heads, cells: read.table.lines.map(({ cells }) => cells) }).toEqual({ heads: ['Label', 'Capacity'], cells: [['W-01', '850']] });
  });

  it('numbers its lines as a spreadsheet does, empty ones counted', () => {
    const read = readCsv('Label\n\nW-01\n\nW-02');
    expect(read.ok && read.table.lines.map(({ number }) => number)).toEqual([3, 5]);
  });

  it('says where a quotation mark is missing', () => {
    expect(readCsv('Label,Note\nW-01,"open\nW-02,x')).toMatchObject({ ok: false, line: 2 });
  });

  it('is empty when nothing stands there', () => { expect(readCsv(' \n ')).toEqual({ ok: true, table: { heads: [], lines: [] } }); });
});
