import { describe, expect, it } from 'vitest';
import { writeCsv } from '@/lib/csv/write-csv';
import { detailsOf } from '@/lib/packs/copy-pack';
import { EXPORT_COLUMNS } from '@/lib/packs/csv-columns';
import { readPackTable } from '@/lib/packs/read-pack-table';
import { packForTest } from '@/tests/support/pack-for-tests';

const HEAD = 'Label;Cells in series;Capacity, mAh;Full voltage of a cell;Second-hand;Printed energy, Wh';
const table = (...lines: string[]): string => [HEAD, ...lines].join('\n');

describe('a table of packs', () => {
  it('is read with decimal commas, 4S, and heads in other words', () => {
    const { packs, faults } = readPackTable('Pack;S;mAh;Full voltage;Used;Wh;Bought\nW-01;4S;850;4,20;no;12,6;5.9.2026\nW-02;6;1100;HV;yes;;2026-09-05', []);
    expect(faults).toEqual([]);
    expect(packs.map(({ input }) => input)).toMatchObject([
      { label: 'W-01', series: 4, parallel: 1, capacityMah: 850, cellType: 'full-4-20', secondHand: false, printedWh: 12.6, boughtOn: '2026-09-05' },
      { label: 'W-02', series: 6, capacityMah: 1100, cellType: 'full-4-35', secondHand: true, printedWh: null, boughtOn: '2026-09-05' },
    ]);
  });

  it('names every faulty cell with its line, and what stands there', () => {
    const { faults } = readPackTable(table('W-01;four;850;4.20;no;', 'W-02;4;9000;4.20;no;', 'W-03;4;850;5.00;no;', 'W-04;4;850;4.20;perhaps;'), []);
    expect(faults).toEqual([
      { line: 2, column: 'Cells in series', found: 'four', message: 'Enter a number in digits, such as 12 or 0.5' },
      { line: 3, column: 'Capacity, mAh', found: '9000', message: 'Enter a number from 100 to 5,000 mAh' },
      { line: 4, column: 'Full voltage of a cell', found: '5.00', message: 'Write one of: 4.20, 4.35, not marked, other, other chemistry' },
      { line: 5, column: 'Second-hand', found: 'perhaps', message: 'Write yes, no or not sure' },
    ]);
  });

  it('asks about a number that is two numbers, and about a date that is two dates', () => {
    const { faults } = readPackTable('Label,Cells in series,"Capacity, mAh",Full voltage of a cell,Second-hand,Bought\nW-01,4,"1,300",4.20,no,3/4/2026', []);
    expect(faults.map(({ column, message }) => [column, message])).toEqual([
      ['Capacity, mAh', '1,300 can be read in two ways: write 1300, or 1.300 with a point'],
      ['Bought', 'Write the date as year, month and day, such as 2026-11-25'],
    ]);
  });

  it('refuses a label that is there already, here or in the register, in any spelling', () => {
    const { faults } = readPackTable(table('w-01;4;850;4.20;no;', 'W-02;4;850;4.20;no;', 'W-02;4;850;4.20;no;'), ['W-01']);
    expect(faults.map(({ line, message }) => [line, message])).toEqual([[2, 'Your register has a pack with this label already'], [4, 'Line 3 has the same label']]);
  });

  it('says which column is missing, and which one nothing is known of', () => {
    expect(readPackTable('Label,Capacity\nW-01,850', []).faults.map(({ message }) => message)).toEqual(['There is no column “Cells in series”', 'There is no column “Full voltage of a cell”', 'There is no column “Second-hand”']);
    expect(readPackTable(`${HEAD};Colour;State\nW-01;4;850;4.20;no;;red;in use`, []).ignored).toEqual(['Colour']);
  });

  it('does not guess where a comma split a cell in two', () => {
    expect(readPackTable(`${HEAD.replaceAll(';', ',').replaceAll(', ', ' ')}\nW-01,4,850,4.20,no,12,6`, []).faults).toMatchObject([{ line: 2, found: '6' }]);
  });

  it.each([['', 'The table is empty. Its first line holds the heads'], [HEAD, 'There is no pack under the heads']])('says so when it is empty: %j', (text, message) => {
    expect(readPackTable(text, []).faults.map((fault) => fault.message)).toEqual([message]);
  });

  it('reads an export back as it was', () => {
    const pack = packForTest({ label: '=W-11', printedWh: 12.6, notes: 'wrap renewed; "twice"' });
    const { packs, faults, ignored } = readPackTable(writeCsv(EXPORT_COLUMNS, [pack]), []);
    expect({ faults, ignored }).toEqual({ faults: [], ignored: [] });
    expect(packs[0]?.input).toEqual({ ...detailsOf(pack), areaId: null });
  });
});
