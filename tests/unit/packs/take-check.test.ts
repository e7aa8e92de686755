import { describe, expect, it } from 'vitest';
import { CHECK_PAGES } from '@/lib/packs/checks/check-pages';
import type { CheckTyped } from '@/lib/packs/checks/check-answers';
import { type CheckContext, measuresOfCheck } from '@/lib/packs/checks/measures-of-check';
import { checkSheet } from '@/lib/packs/checks/check-sheet';
import { leaveAnswers, takeCheck } from '@/lib/packs/checks/take-check';
import { expectWithin } from '@/tests/support/expect-within';
import { packForTest } from '@/tests/support/pack-for-tests';
import { secondCheck, secondLimits } from '@/tests/support/second-pack-limits';

const CONTEXT: CheckContext = { limits: secondLimits, pack: packForTest(), unit: '°C', today: '2026-11-25', charges: 60, firstResistance: null };
const LOOK: CheckTyped = Object.fromEntries(['venting', 'growing', 'wet', 'swollen', 'bareFoil', 'dented', 'cellMoved', 'discoloured', 'tornWrap', 'damagedLead'].map((name) => [name, 'no']));
const LISTENED: CheckTyped = { ...LOOK, hissing: 'no', smell: 'no' };
const WARMTH: CheckTyped = { ...LISTENED, hoursSinceUse: '20', packTemperature: '21', roomTemperature: '20', warming: 'first look' };
const RECORD: CheckTyped = { ...WARMTH, marked: 'yes', hit: 'no' };
const VOLTAGE: CheckTyped = { ...RECORD, cell1: '3.80', cell2: '3,81', cell3: '3.80', cell4: '3.79' };

describe('a pack check', () => {
  it('asks what the content asks, in its order, and the meter last', () => {
    expect(CHECK_PAGES.flatMap(({ steps }) => steps)).toEqual(secondCheck.steps.map(({ id }) => id));
    const asked = checkSheet(secondLimits, packForTest({ secondHand: null })).pages.flatMap(({ questions }) => questions.map(({ name }) => name));
    expect(new Set(asked)).toEqual(new Set(secondCheck.measures.filter(({ values }) => values === 'yes or no').map(({ id }) => id)));
  });

  it('goes from page to page and comes out as fit', () => {
    expect(takeCheck('look', LOOK, CONTEXT)).toEqual({ turn: 'next', page: 'listen' });
    expect(takeCheck('listen', LISTENED, CONTEXT)).toEqual({ turn: 'next', page: 'warmth' });
    expect(takeCheck('warmth', WARMTH, CONTEXT)).toEqual({ turn: 'next', page: 'record' });
    expect(takeCheck('record', RECORD, CONTEXT)).toEqual({ turn: 'next', page: 'voltage' });
    expect(takeCheck('voltage', VOLTAGE, CONTEXT)).toMatchObject({ turn: 'done', found: { cellVolts: [3.8, 3.81, 3.8, 3.79], result: { verdict: 'fit', blocks: [] } } });
  });

  it.each(['venting', 'growing', 'wet'])('ends at once when there is %s, though nothing else of the page is answered', (sign) => {
    for (const answer of ['yes', 'not sure']) {
      expect(takeCheck('look', { [sign]: answer }, CONTEXT)).toMatchObject({ turn: 'leave', found: { result: { verdict: 'leave', endsAt: { step: 'look', measure: sign } } } });
    }
  });

  it('ends when it gives off warmth, by hand or by thermometer, before any meter', () => {
    expect(takeCheck('warmth', { ...LISTENED, hoursSinceUse: '5', feltWarm: 'yes', warming: 'first look' }, CONTEXT)).toMatchObject({ turn: 'leave' });
    expect(takeCheck('warmth', { ...LISTENED, hoursSinceUse: '5', packTemperature: '30', roomTemperature: '20', warming: 'no' }, CONTEXT)).toMatchObject({ turn: 'leave' });
  });

  it('does not take warmth from flying for a sign', () => {
    const turn = takeCheck('warmth', { ...LISTENED, hoursSinceUse: '0.1', feltWarm: 'yes', packTemperature: '38', roomTemperature: '20', warming: 'first look' }, CONTEXT);
    expect(turn).toEqual({ turn: 'next', page: 'record' });
  });

  it('asks nobody to put a meter on a pack that is to be isolated', () => {
    const swollen = { ...RECORD, swollen: 'yes' };
    expect(takeCheck('record', swollen, CONTEXT)).toMatchObject({ turn: 'done', found: { result: { verdict: 'isolate', blocks: ['charge', 'fly', 'travel'] } } });
  });

  it('ends with a cell above its limit on charge', () => {
    expect(takeCheck('voltage', { ...VOLTAGE, hoursSinceCharge: '0', cell1: '4.3' }, CONTEXT)).toMatchObject({ turn: 'leave' });
    expect(takeCheck('voltage', { ...VOLTAGE, hoursSinceCharge: '5', cell1: '4.3' }, CONTEXT)).toMatchObject({ turn: 'done', found: { result: { verdict: 'isolate' } } });
  });

  it('takes no slip of the keyboard for a sign', () => {
    expect(takeCheck('warmth', { ...WARMTH, packTemperature: '210' }, CONTEXT)).toMatchObject({ turn: 'faults', faults: [{ field: 'packTemperature', message: 'Enter a number from -30 to 150 °C' }] });
    expect(takeCheck('voltage', { ...VOLTAGE, cell1: '38' }, CONTEXT)).toMatchObject({ turn: 'faults', faults: [{ field: 'cell1' }] });
  });

  it('says what is open on a page, each once', () => {
    const turn = takeCheck('look', { ...LOOK, dented: '', swollen: 'maybe' }, CONTEXT);
    expect(turn).toEqual({ turn: 'faults', faults: [{ field: 'swollen', message: 'Answer: Is it swollen or puffed up?' }, { field: 'dented', message: 'Answer: Is there a dent, a hole or a tear?' }] });
    expect(takeCheck('warmth', LISTENED, CONTEXT)).toMatchObject({ turn: 'faults', faults: [{ field: 'warming' }, { field: 'feltWarm' }] });
    expect(takeCheck('record', WARMTH, CONTEXT)).toMatchObject({ turn: 'faults', faults: [{ field: 'marked' }, { field: 'hit' }] });
    expect(takeCheck('voltage', { ...RECORD, cell1: '3.8' }, CONTEXT)).toMatchObject({ turn: 'faults', faults: [{ field: 'cell2' }, { field: 'cell3' }, { field: 'cell4' }] });
    expect(takeCheck('voltage', RECORD, CONTEXT)).toMatchObject({ turn: 'faults', faults: [{ field: 'cell1' }] });
  });

  it('without a meter is never fit', () => {
    expect(takeCheck('voltage', { ...RECORD, notMeasured: 'yes' }, CONTEXT)).toMatchObject({ turn: 'done', found: { cellVolts: [], result: { verdict: 'watch', blocks: ['charge', 'fly', 'travel'] } } });
  });

  it('takes a cell that shows nothing for a silent one, not for an empty one', () => {
    expect(takeCheck('voltage', { ...VOLTAGE, cell3: '0' }, CONTEXT)).toMatchObject({ turn: 'done', found: { cellVolts: [3.8, 3.81, null, 3.79], measures: { silentCells: 1, cellMin: 3.79 }, result: { verdict: 'isolate' } } });
  });

  it('asks of a pack of unknown origin, and holds doubt against it', () => {
    const context = { ...CONTEXT, pack: packForTest({ secondHand: null }) };
    expect(takeCheck('record', RECORD, context)).toMatchObject({ turn: 'faults', faults: [{ field: 'secondHand' }] });
    const turn = takeCheck('voltage', { ...VOLTAGE, secondHand: 'not sure' }, context);
    expect(turn).toMatchObject({ turn: 'done', found: { result: { verdict: 'watch', blocks: ['charge'] } } });
  });

  it('knows which answers alone mean leaving', () => {
    expect(leaveAnswers(secondLimits)).toEqual(Object.fromEntries(['venting', 'hissing', 'growing', 'smell', 'wet', 'feltWarm', 'warming'].map((name) => [name, ['yes', 'not sure']])));
  });
});

describe('the measures of a check', () => {
  it('are in degrees Celsius whatever was typed', () => {
    const { measures } = measuresOfCheck({ ...WARMTH, packTemperature: '77', roomTemperature: '68' }, { ...CONTEXT, unit: '°F' });
    // 77 °F = 25 °C and 68 °F = 20 °C by definition of the scales.
    expectWithin(Number(measures['packTemperature']), 25, { abs: 1e-9 });
    expectWithin(Number(measures['temperatureRise']), 5, { abs: 1e-6 });
  });

  it('say of the register what it knows, and name what it does not', () => {
    // 12 January to 25 November 2026 are 317 days: 10 whole months.
    expect(measuresOfCheck({}, CONTEXT).measures).toMatchObject({ cellType: 'full-4-20', secondHand: false, ageMonths: 10, cycles: 60 });
    const unknown = { ...CONTEXT, charges: null, pack: packForTest({ firstUsedOn: null, boughtOn: null }) };
    expect(measuresOfCheck({}, unknown).measures).toMatchObject({ ageMonths: { missing: expect.any(String) as string }, cycles: { missing: expect.any(String) as string } });
  });

  it('hold resistance against the first reading, under like conditions only', () => {
    const first = { milliohms: 8, temperature: 21, cellVoltage: 3.8 };
    const now = { ...VOLTAGE, milliohms: '12' };
    expect(measuresOfCheck(now, { ...CONTEXT, firstResistance: first }).measures).toMatchObject({ resistanceRatio: 1.5 });
    expect(measuresOfCheck(now, { ...CONTEXT, firstResistance: { ...first, temperature: 5 } }).measures).toMatchObject({ resistanceRatio: { missing: expect.stringContaining('temperature differs') as string } });
    expect(measuresOfCheck(now, CONTEXT)).toMatchObject({ resistance: [{ milliohms: 12, temperature: 21, cellVoltage: 3.8 }], measures: { resistanceRatio: { missing: expect.stringContaining('first reading') as string } } });
  });
});
