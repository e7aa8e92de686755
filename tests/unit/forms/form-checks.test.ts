import { describe, expect, it, vi } from 'vitest';
import { errorKey, errorsOfAnswer, faultsHere, foundHere } from '@/app/_components/form/check-here';
import { type FormCheck, loadCheck } from '@/app/_components/form/form-check-list';
import { faultsOfIssues } from '@/lib/forms/faults-of-issues';
import { PackInputSchema } from '@/lib/packs/pack-input';
import { RulesPostSchema, readRulesPost } from '@/lib/packs/school-rules-input';

const LIMITS = [{ id: 'cells.spread', text: 'spread', measure: null, unit: 'V', standing: 0.03, range: { min: 0.01, max: 0.03 } }];
const NO_RULES = { packLimits: {} };
const PLAIN = ['pack', 'pack-change', 'site', 'site-change', 'area', 'area-change', 'school-begin', 'school-change', 'invite', 'sign-up', 'action', 'action-change', 'venue', 'travel', 'venue-link'] as const;
const ALL: readonly FormCheck[] = [...PLAIN.map((of) => ({ of })), { of: 'adults' }, { of: 'event', timeZone: 'UTC' }, { of: 'event-change', timeZone: 'UTC' }, { of: 'limits', limits: LIMITS, rules: NO_RULES }];

describe('the check of a form', () => {
  it.each(ALL)('of $of finds faults in a form that holds nothing', async (check) => {
    const faultsOf = await loadCheck(check);
    expect(faultsOf({})).not.toEqual([]);
  });

  it('says what the action says, in the same words', async () => {
    const input = { label: '', series: '40', capacityMah: '85,x', cellType: 'none', boughtOn: '2026-02-30', secondHand: 'no' };
    const parsed = PackInputSchema.safeParse(input);
    const faults = (await loadCheck({ of: 'pack' }))(input);
    expect(faults).toEqual(parsed.success ? [] : faultsOfIssues(parsed.error.issues));
    expect(faults.map(({ field }) => field)).toEqual(['label', 'series', 'capacityMah', 'cellType', 'boughtOn']);
  });

  it('looks as far as the reader behind the schema', async () => {
    const event = { title: 'Cup', siteId: 'a', starts: '2026-11-25T12:00', ends: '2026-11-25T11:00' };
    expect((await loadCheck({ of: 'event', timeZone: 'Europe/London' }))(event)).toEqual([{ field: 'ends', message: 'It ends after it begins' }]);
    expect((await loadCheck({ of: 'adults' }))({ eventId: 'e', revision: '1', adult2Phone: '0161 496 0000' })).toEqual([
      { field: 'adult2Name', message: 'Enter the name' }, { field: 'adult2Parts', message: 'Tick what this person does there' },
    ]);
    const post = { revision: '1', temperature: '°C', checkDays: '', 'limit.cells.spread': '0.5' };
    const read = readRulesPost(RulesPostSchema.parse(post), LIMITS, NO_RULES);
    expect((await loadCheck({ of: 'limits', limits: LIMITS, rules: NO_RULES }))(post)).toEqual(read.ok ? [] : read.faults);
  });

  it('leaves to the server what its clock and its list of zones decide', async () => {
    const incident = { clientKey: 'a key of a form', called: 'nobody-needed', hurt: 'no', breathed: 'no', kinds: 'smoke', doing: 'charging', where: 'vehicle', when: '2999-01-01T10:00' };
    expect((await loadCheck({ of: 'incident', timeZone: 'UTC' }))(incident).map(({ field }) => field)).not.toContain('when');
    expect((await loadCheck({ of: 'incident', timeZone: 'UTC' }))({ ...incident, when: '' })).toContainEqual({ field: 'when', message: 'Enter day and time, such as 25 November 2026, 15:48' });
    expect((await loadCheck({ of: 'school-change' }))({ timeZone: 'Moon/Tranquillity' }).map(({ field }) => field)).not.toContain('timeZone');
  });

  it('that cannot run says nothing: a form is never stuck on it', async () => {
    const said = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    expect(await faultsHere({ form: { current: new Proxy({} as HTMLFormElement, { get: () => { throw new Error('An old browser'); } }) }, check: { of: 'pack' } })).toEqual([]);
    expect(said).toHaveBeenCalledOnce();
    said.mockRestore();
  });
});

describe('the errors at the fields', () => {
  it('stand by the whole name, dots and all, and know who said them', () => {
    const errors = errorsOfAnswer([{ field: 'limit.cells.spread', message: 'a' }, { field: null, message: 'b' }]);
    expect(errors).toEqual({ [errorKey('limit.cells.spread')]: { type: 'answered', message: 'a' }, root: { type: 'answered', message: 'b' } });
    expect(errorKey('limit.cells.spread')).not.toContain('.');
    expect(foundHere(errors ?? {})).toEqual([]);
    expect(foundHere({ label: { type: 'found', message: 'c' }, series: { type: 'answered', message: 'd' } })).toEqual(['label']);
    expect(errorsOfAnswer([])).toBeUndefined();
  });
});
