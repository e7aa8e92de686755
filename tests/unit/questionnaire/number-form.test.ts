import { describe, expect, it } from 'vitest';
import { earlierFigures, withEarlier } from '@/lib/questionnaire/earlier-fields';
import { askedFields } from '@/lib/questionnaire/number-boxes';
import { numberFormSchema, readBoxes, typedFrom } from '@/lib/questionnaire/number-form';
import { edition2 } from '@/lib/content/edition-2';
import type { NumberField } from '@/lib/content/model';

const leave: NumberField = { input: 'evac', label: 'until everybody is out', unit: 's', min: 15, max: 1800, entry: 'minutes and seconds' };
const crash: NumberField = { input: 'crash', label: 'of ten flights', unit: 'share', min: 0, max: 1, entry: 'of ten' };
const read = (field: NumberField, typed: Readonly<Record<string, string>>) => numberFormSchema([field]).safeParse(typed);
const messages = (result: ReturnType<typeof read>) => result.error?.issues.map((issue) => [issue.path[0], issue.message]);

describe('a time', () => {
  it('is typed in minutes and seconds and kept in seconds', () => {
    expect(read(leave, { 'evac-min': '2', 'evac-s': '30' }).data).toEqual({ evac: 150 });
    expect(read(leave, { 'evac-min': '', 'evac-s': '90' }).data).toEqual({ evac: 90 });
    expect(read(leave, { 'evac-min': '', 'evac-s': '' }).data).toEqual({ evac: undefined });
  });

  it('says what would be right beside the first box, and what cannot be read beside its own', () => {
    expect(messages(read(leave, { 'evac-min': '', 'evac-s': '5' }))).toEqual([['evac-min', 'Enter a time from 15 seconds to 30 minutes']]);
    expect(messages(read(leave, { 'evac-min': '2', 'evac-s': 'ten' }))).toEqual([['evac-s', expect.stringContaining('digits')]]);
    expect(messages(read(leave, { 'evac-min': '3', 'evac-s': '-10' }))).toEqual([['evac-s', 'Enter a number from 0']]);
  });

  it('comes back into its boxes as it was', () => {
    for (const seconds of [15, 60, 90, 97.5, 1800]) expect(read(leave, typedFrom([leave], { evac: seconds })).data).toEqual({ evac: seconds });
    expect(typedFrom([leave], { evac: 90 })).toEqual({ 'evac-min': '1', 'evac-s': '30' });
  });
});

describe('a share', () => {
  it('is typed as so many of ten', () => {
    expect(read(crash, { crash: '3' }).data).toEqual({ crash: 0.3 });
    expect(messages(read(crash, { crash: '11' }))).toEqual([['crash', 'Enter a number from 0 to 10']]);
  });

  it('comes back without a speck of rounding', () => {
    expect(typedFrom([crash], { crash: 0.31 })).toEqual({ crash: '3.1' });
    for (const share of [0, 0.07, 0.3, 0.31, 0.7, 1]) expect(read(crash, typedFrom([crash], { crash: share })).data).toEqual({ crash: share });
  });
});

describe('a part of another number', () => {
  const trips: NumberField = { input: 'trips', label: 'trips', unit: 'trips', min: 0, max: 200 };
  const warm: NumberField = { input: 'warm', label: 'on warm days', unit: 'trips', min: 0, max: 200, noMoreThan: 'trips' };

  it('is held to it, at its own box, when both are given', () => {
    expect(readBoxes([trips, warm], { trips: '3', warm: '4' }).faults).toEqual([{ box: 'warm', message: 'Enter a number from 0 to 3, the trips' }]);
    expect(readBoxes([trips, warm], { trips: '4', warm: '4' })).toEqual({ numbers: { trips: 4, warm: 4 }, faults: [] });
    expect(readBoxes([trips, warm], { warm: '4' })).toEqual({ numbers: { trips: undefined, warm: 4 }, faults: [] });
  });

  it('is nothing more when what it is a part of cannot be read', () => {
    expect(readBoxes([trips, warm], { trips: '300', warm: '4' }).faults.map(({ box }) => box)).toEqual(['trips']);
  });
});

describe('people near the table', () => {
  const question = edition2.questions.find(({ id }) => id === 'room-people');
  const fields = question?.kind === 'number' ? question.fields : [];

  it('are never more than those in the room, at their own box', () => {
    expect(readBoxes(fields, { peopleRoom: '12', peopleNear: '13' }).faults).toEqual([{ box: 'peopleNear', message: 'Enter a number from 0 to 12: these are part of the 12 above' }]);
    expect(readBoxes(fields, { peopleRoom: '12', peopleNear: '12' }).faults).toEqual([]);
    expect(readBoxes(fields, { peopleNear: '13' }).faults).toEqual([]);
  });
});

describe('a figure of an earlier edition', () => {
  const size = edition2.questions.find((question) => question.id === 'room-size');
  const fields = size?.kind === 'number' ? size.fields : [];

  it('is no longer asked for, and still told', () => {
    expect(askedFields(fields).map(({ input }) => input)).toEqual(['chargingLength', 'chargingWidth', 'chargingHeight']);
    expect(earlierFigures(fields, { chargingVolume: 180 })).toMatchObject([{ value: 180, replacedBy: [{}, {}, {}] }]);
  });

  it('counts until everything that replaces it is given, and not a box longer', () => {
    const half = withEarlier(fields, { chargingVolume: 180 }, { chargingLength: 9, chargingWidth: undefined, chargingHeight: undefined });
    expect(half).toMatchObject({ chargingVolume: 180, chargingLength: 9 });
    expect(withEarlier(fields, half, { chargingLength: 9, chargingWidth: 6, chargingHeight: 3 })).toEqual({ chargingLength: 9, chargingWidth: 6, chargingHeight: 3 });
  });
});
