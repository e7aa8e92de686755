import { describe, expect, it } from 'vitest';
import { questionTexts, resultTexts } from '@/tests/support/edition-texts';
import { edition2 } from '@/lib/content/edition-2';
import type { Answer } from '@/lib/core/document';
import { resolve } from '@/lib/questionnaire/resolve';

/** A team that flies and travels by road, not by air, and whose every answer opens what can be opened besides. */
const ROAD_TEAM: Readonly<Record<string, Answer>> = {
  'room-where': 'indoor', 'routine-attended': 'overnight', 'people-needs': 'both', 'team-flies': 'yes', 'team-limit-asked': 'limit', 'store-where': 'room', 'store-neighbours': 'day',
  'room-air': 'openings', 'travel-trips': { roadTrips: 8, warmTrips: 2, packsPerTrip: 10, airTrips: 0 }, 'travel-kind': 'other',
};
const KNOCK_OUT = [
  'room-where', 'room-exits', 'room-off-exit', 'routine-attended', 'routine-elsewhere', 'alarm-building', 'alarm-raise', 'response-number', 'response-meeting',
  'damaged-apart', 'damaged-outdoors', 'people-needs', 'table-container', 'table-surface',
];
const TRADE_WORDS = /\b(fuel|lots?|bays?|arm|armed|disarmed|pit|loss[- ]of[- ]link|vented|free metre|keeper|clear of the drive|air changes?|balance lead|in series)\b/i;
const text = (id: string) => edition2.questions.find((question) => question.id === id);

describe('length', () => {
  const path = resolve(edition2, ROAD_TEAM).path;
  const shown = new Set(path.map(({ id }) => id));
  const pages = (edition2.pages ?? []).filter((page) => page.questions.some((id) => shown.has(id)));
  const seconds = path.reduce((sum, question) => sum + (question.seconds ?? Number.NaN), 0);

  it(`a team that flies and goes by road: ${pages.length} pages, ${Math.round(seconds / 60)} minutes, ${path.length} questions`, () => {
    expect(shown).toContain('travel-vehicle');
    expect(shown).not.toContain('travel-air');
    expect(pages.length).toBeLessThanOrEqual(28);
    expect(seconds).toBeLessThanOrEqual(1500);
  });

  it('what a person reads and decides is what the seconds come from', () => {
    const words = (each: readonly string[]): number => each.join(' ').split(/\s+/).filter(Boolean).length;
    for (const question of edition2.questions) {
      const options = 'options' in question ? question.options.filter(({ earlier }) => earlier !== true) : [];
      const fields = question.kind === 'number' ? question.fields.filter(({ earlier }) => earlier === undefined) : [];
      const decide = { choice: 4, multi: 4, ticks: 3 * options.length, number: 6 * fields.length, text: 12 }[question.kind];
      expect(question.seconds, question.id).toBe(Math.ceil(words([question.text, ...options.map(({ label }) => label), ...fields.map(({ label }) => label)]) / 4) + decide);
    }
  });
});

describe('order', () => {
  it('what decides whether one may charge at all stands first, and waits for nothing', () => {
    expect(edition2.sections[0]).toEqual({ id: 'first', title: 'First: may you charge at all?' });
    const first = edition2.questions.filter(({ section }) => section === 'first').map(({ id }) => id);
    expect(edition2.questions.slice(0, first.length).map(({ id }) => id)).toEqual(first);
    expect(first).toEqual(expect.arrayContaining(KNOCK_OUT));
    for (const id of KNOCK_OUT) expect(text(id)?.showIf, id).toBeUndefined();
  });

  it('what holds most stops comes before what holds none', () => {
    expect(edition2.sections.map(({ id }) => id)).toEqual(['first', 'team', 'damaged', 'storage', 'room', 'table', 'routine', 'response', 'electric', 'handling', 'arena', 'travel']);
  });
});

describe('words', () => {
  it('of the trade are gone from what a teacher reads', () => {
    const found = [...questionTexts(edition2), ...resultTexts(edition2)].filter((each) => TRADE_WORDS.test(each.text) || (/\b1C\b/.test(each.text) && each.where !== 'gentle-rate'));
    expect(found).toEqual([]);
  });

  it('name no number of one country', () => {
    const found = [...questionTexts(edition2), ...resultTexts(edition2)].filter((each) => /\b(call|dial|ring)\b[^.]*\b\d{3}\b/i.test(each.text) || /(?<![\d,.])(000|110|111|112|119|911|999)\b/.test(each.text));
    expect(found).toEqual([]);
  });
});

describe('what is asked', () => {
  const fieldsOf = (id: string) => { const question = text(id); return question?.kind === 'number' ? question.fields : []; };
  const asked = (id: string) => fieldsOf(id).filter(({ earlier }) => earlier === undefined).map(({ input, entry }) => (entry === undefined ? input : `${input}, ${entry}`));

  it.each([
    ['lengths, not a volume', 'room-size', ['chargingLength', 'chargingWidth', 'chargingHeight']],
    ['lengths, not a volume', 'store-size', ['storageLength', 'storageWidth', 'storageHeight']],
    ['lengths, not a volume', 'arena-room', ['arenaLength', 'arenaWidth', 'arenaHeight']],
    ['width and height, not an area', 'room-window', ['chargingOpeningWidth', 'chargingOpeningHeight']],
    ['minutes, not seconds', 'room-leave', ['chargingEvac, minutes and seconds']],
    ['of ten flights, not a share', 'team-use', ['chargesPerPackSession', 'crashShare, of ten']],
    ['how long the last one waited', 'damaged-number', ['damagedPacks', 'disposedPacks', 'lastWaitDays']],
  ])('%s: %s', (_, id, inputs) => { expect(asked(id)).toEqual(inputs); });

  it.each([['charging', 4], ['storage', 1], ['arena', 30]])('the %s volume follows from any lengths allowed, inside its own range', (area, least) => {
    const volume = edition2.inputs.find(({ id }) => id === `${area}Volume`);
    const sides = ['Length', 'Width', 'Height'].map((side) => edition2.inputs.find(({ id }) => id === `${area}${side}`));
    expect(volume?.default).toBe(`${area}Length * ${area}Width * ${area}Height`);
    expect(sides.reduce((product, side) => product * (side?.min ?? 0), 1)).toBeGreaterThanOrEqual(least);
    expect(sides.reduce((product, side) => product * (side?.max ?? Infinity), 1)).toBeLessThanOrEqual(volume?.max ?? 0);
  });

  it('the building can answer for itself', () => {
    const whole = edition2.questions.filter(({ keeper }) => keeper === true).map(({ id }) => id);
    const lines = edition2.questions.flatMap((question) => (question.kind === 'ticks' ? question.options.filter(({ keeper }) => keeper === true).map(({ id }) => `${question.id} ${id}`) : []));
    expect([...whole, ...lines]).toEqual([
      'team-limit-asked', 'store-neighbours', 'store-near-people', 'store-air', 'room-fan', 'room-ach', 'room-building', 'electric-circuit', 'arena-air', 'arena-detection',
      'electric-kit guard', 'electric-kit leakage',
    ]);
  });

  it('what the app will know is marked', () => {
    expect(edition2.questions.filter(({ prefilledFrom }) => prefilledFrom !== undefined).length).toBeGreaterThanOrEqual(16);
  });
});
