import { describe, expect, it } from 'vitest';
import { guidanceOfStop } from '@/app/_components/result/guidance-of-stop';
import { printedInputs } from '@/lib/questionnaire/printed-inputs';
import { SMOKE_GUIDANCE } from '@/app/_components/result/smoke-guidance';
import { guidanceOfRoom } from '@/app/_components/result/guidance-of-room';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import { guidance2 } from '@/lib/content/guidance-2';
import { acceptanceWords } from '@/lib/wording/acceptance';
import { guidanceTogether } from '@/lib/content/guidance-together';

describe('whether a stop may be accepted', () => {
  const stop = (id: string) => acceptanceWords(edition2.stops.find((one) => one.id === id)?.acceptable);

  it('is said of every stop of the second edition, and of none of the first, which does not know', () => {
    expect(edition2.stops.filter(({ acceptable }) => acceptanceWords(acceptable) === null)).toEqual([]);
    expect(edition1.stops.flatMap(({ acceptable }) => acceptanceWords(acceptable) ?? [])).toEqual([]);
  });

  it('is never, with a paper, or until a date with something in its place', () => {
    expect(stop('charge-on-exit')?.lead).toBe('Never accepted.');
    expect(stop('over-energy-limit')?.words).toContain('consent in writing');
    expect(stop('no-net')).toMatchObject({ lead: 'Accepted for 30 days at most, with something in its place.' });
    expect(stop('no-net')?.words).toContain('nobody is inside');
  });
});

describe('guidance on the page', () => {
  const shown = (whole = {}) => guidanceOfRoom(edition2, { answers: {}, ...whole }, SMOKE_GUIDANCE);

  it('has the number of the room in it, and says so where there is none', () => {
    const call = (whole: object) => shown(whole as Readonly<Record<string, unknown>>).flatMap((text) => text.lines).map((line) => line.lead).find((lead) => lead.includes('call'));
    expect(call({ answers: { 'response-number': '555 0100' } })).toContain('call 555 0100');
    expect(call({ answers: { 'response-number': 'on the card by the door' } })).toContain('not set here');
    expect(call({ answers: { 'response-number': '555 0100' }, inputs: { localNumber: '555 0199' } })).toContain('555 0199');
  });

  it('never stands beside what it forbids: the page shows figures, a severity class and a form', () => {
    for (const text of guidanceTogether(guidance2, SMOKE_GUIDANCE)) expect(text.neverBeside.filter((rule) => 'shown' in rule)).toEqual([]);
    expect(() => guidanceTogether(guidance2, ['extinguishers', 'smoke'])).toThrow('never stand on one page');
    expect(() => guidanceTogether(guidance2, ['nonsense'])).toThrow('no text nonsense');
  });

  it('is linked from a stop only where both exist', () => {
    const linked = edition2.stops.flatMap((stop) => guidanceOfStop(edition2, stop.id) ?? []);
    expect(linked.map((text) => text.id)).toEqual(expect.arrayContaining(['outdoor-spot', 'detector-off', 'charging-alone']));
    expect(linked).toHaveLength(6);
  });
});

describe('what is printed and changes no figure', () => {
  const words = (whole: Parameters<typeof printedInputs>[1]) => Object.fromEntries(printedInputs(edition2, whole).map((one) => [one.input, one.words]));

  it('says what nobody answered, and puts first what nobody asked', () => {
    expect(words({ answers: {} })).toMatchObject({ limitAsked: 'not answered', siteAddress: 'not answered' });
    const asked = printedInputs(edition2, { answers: { 'team-limit-asked': 'not-yet', 'response-address': 'Mill Lane 4', 'response-second': 'the lower gate', 'team-consent': 'both', 'store-check': 'yes' } });
    expect(asked[0]).toMatchObject({ input: 'limitAsked', open: true });
  });

  it('takes the words of the answer, or what the document itself says', () => {
    expect(words({ answers: { 'response-address': 'Mill Lane 4' } })['siteAddress']).toBe('Mill Lane 4');
    expect(words({ answers: { 'response-address': 'Mill Lane 4' }, inputs: { siteAddress: 'Mill Lane 6' } })['siteAddress']).toBe('Mill Lane 6');
  });
});
