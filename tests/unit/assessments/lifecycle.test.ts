import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { acceptStop, dayAfter, stillAccepted } from '@/lib/assessments/acceptance';
import { reviseAnswer } from '@/lib/assessments/answer-revision';
import { drifted, forceOn } from '@/lib/assessments/covers';
import { liftSuspension, newVersion, paperChanged, sendBack, signAgain, signAsOfficer, submit, suspend } from '@/lib/assessments/lifecycle';
import type { Standing } from '@/lib/assessments/standing';

const draft: Standing = { state: 'draft', preparerId: 'teacher', preparerSigned: false, suspended: false };
const submitted: Standing = { ...draft, state: 'with-officer', preparerSigned: true };
const toSign = { standing: submitted, personId: 'officer', openStops: [], extreme: [] };
const today = '2026-11-25';

describe('the way of an assessment', () => {
  it('goes from draft to the officer, back, again, and into force', () => {
    expect(submit(draft, 'teacher')).toEqual({ ok: true, change: { to: 'with-officer', preparerSigned: true } });
    expect(sendBack(submitted, 'Which door?')).toEqual({ ok: true, change: { to: 'returned', preparerSigned: false } });
    expect(submit({ ...draft, state: 'returned' }, 'teacher').ok).toBe(true);
    expect(signAsOfficer(toSign)).toEqual({ ok: true, change: { to: 'signed', preparerSigned: true } });
  });
  it('is handed over by its preparer alone, returned only with words', () => {
    expect(submit(draft, 'somebody else').ok).toBe(false);
    expect(sendBack(submitted, '  ').ok).toBe(false);
  });
  it('is never signed twice by one person, whatever the roles', () => {
    expect(signAsOfficer({ ...toSign, personId: 'teacher' })).toMatchObject({ ok: false, why: expect.stringContaining('You prepared it') as string });
  });
  it('is not signed while a stop condition holds or a risk is extreme', () => {
    expect(signAsOfficer({ ...toSign, openStops: ['No way out'] })).toMatchObject({ ok: false, why: expect.stringContaining('No way out') as string });
    expect(signAsOfficer({ ...toSign, extreme: ['Charge fire'] }).ok).toBe(false);
  });
  it('needs the preparer again after the officer changed the paper', () => {
    expect(paperChanged(submitted)).toEqual({ ok: true, change: { to: 'with-officer', preparerSigned: false } });
    const changed = { ...submitted, preparerSigned: false };
    expect(signAsOfficer({ ...toSign, standing: changed }).ok).toBe(false);
    expect(signAgain(changed, 'teacher').ok).toBe(true);
    expect(signAgain(changed, 'officer').ok).toBe(false);
    expect(signAgain(submitted, 'teacher').ok).toBe(false);
  });
  it('does not change once it is signed: the next is a copy', () => {
    const signed: Standing = { ...submitted, state: 'signed' };
    expect(submit(signed, 'teacher').ok).toBe(false);
    expect(sendBack(signed, 'x').ok).toBe(false);
    expect(newVersion(signed)).toEqual({ ok: true, change: { to: 'draft' } });
    expect(newVersion(draft).ok).toBe(false);
  });
  it('is suspended and freed only with a reason, and only once it is signed', () => {
    const signed: Standing = { ...submitted, state: 'signed' };
    expect(suspend(draft, 'fire').ok).toBe(false);
    expect(suspend(signed, '').ok).toBe(false);
    expect(suspend(signed, 'Smoke on Friday').ok).toBe(true);
    expect(liftSuspension({ ...signed, suspended: true }, '').ok).toBe(false);
    expect(liftSuspension(signed, 'x').ok).toBe(false);
  });
});

describe('accepting a stop condition', () => {
  const stops = (kind: string) => edition2.stops.filter((stop) => stop.acceptable?.kind === kind);
  const full = { reason: 'The net is being mended', replacement: 'nobody inside or within 5 m', endsOn: '2026-12-10', paper: 'letter of 3 November' };
  it('is refused in words where nobody may, whatever is written', () => {
    expect(stops('never').length).toBeGreaterThan(10);
    for (const stop of stops('never')) expect(acceptStop(stop, full, today)).toEqual({ ok: false, why: stop.acceptable?.text });
  });
  it('takes a paper where an authority has to consent', () => {
    expect(stops('with-paper').length).toBeGreaterThan(0);
    for (const stop of stops('with-paper')) {
      expect(acceptStop(stop, { ...full, paper: ' ' }, today).ok).toBe(false);
      expect(acceptStop(stop, { ...full, endsOn: '' }, today).ok).toBe(false);
      expect(acceptStop(stop, full, today)).toMatchObject({ ok: true, change: { paper: 'letter of 3 November' } });
    }
  });
  it('takes a replacement and a day that lies ahead and near enough', () => {
    expect(stops('until').length).toBeGreaterThan(0);
    for (const stop of stops('until')) {
      const days = stop.acceptable?.kind === 'until' ? stop.acceptable.days : 0;
      expect(acceptStop(stop, { ...full, paper: '' }, today)).toMatchObject({ ok: true, change: { paper: null } });
      expect(acceptStop(stop, { ...full, endsOn: dayAfter(today, days) }, today).ok).toBe(true);
      expect(acceptStop(stop, { ...full, endsOn: dayAfter(today, days + 1) }, today).ok).toBe(false);
      for (const wrong of [{ replacement: '' }, { endsOn: '' }, { endsOn: 'soon' }, { endsOn: today }, { reason: ' ' }]) expect(acceptStop(stop, { ...full, ...wrong }, today).ok, JSON.stringify(wrong)).toBe(false);
    }
  });
  it('holds through its last day and ends by itself', () => {
    expect(stillAccepted({ endsOn: today }, today)).toBe(true);
    expect(stillAccepted({ endsOn: '2026-11-24' }, today)).toBe(false);
  });
  it('counts days over the end of a month and a year', () => expect([dayAfter('2026-12-31', 1), dayAfter('2028-02-28', 1)]).toEqual(['2027-01-01', '2028-02-29']));
});

describe('what a signed paper covers', () => {
  const covered = { packs: 26, storedWh: 330, sessions: 60, people: 14 };
  it('says what has left it, and nothing of what nobody counted', () => {
    expect(drifted(covered, { packs: 26 })).toEqual([]);
    expect(drifted(covered, { packs: 27, people: 20 }).map((one) => one.what)).toEqual(['packs', 'people']);
  });
  it('takes the same packs for the same energy, though labels and sums are rounded, and one pack more for more', () => {
    const printed = Array.from({ length: 26 }, () => 12.6).reduce((sum, one) => sum + one, 0);
    const workedOut = 26 * 0.85 * 4 * 3.7;
    expect(drifted({ ...covered, storedWh: workedOut }, { storedWh: printed })).toEqual([]);
    expect(drifted({ ...covered, storedWh: printed }, { storedWh: 26 * 12.6 })).toEqual([]);
    for (const packs of [15, 80]) expect(drifted({ ...covered, storedWh: packs * 12.6 }, { storedWh: (packs + 1) * 12.6 }).map((one) => one.what)).toEqual(['storedWh']);
  });
  it('holds only while it is signed, not suspended, not run out and not contradicted', () => {
    const signed = { state: 'signed', suspended: false, until: '2027-07-31', reviewAsked: false };
    expect(forceOn('2027-07-31', signed)).toBe('in force');
    expect(forceOn('2028-01-01', { ...signed, until: null })).toBe('in force');
    expect(forceOn(today, { ...signed, suspended: true })).toBe('suspended');
    expect(forceOn('2027-08-01', signed)).toBe('run out');
    expect(forceOn(today, { ...signed, reviewAsked: true })).toBe('review asked');
    expect(forceOn(today, { ...signed, state: 'superseded' })).toBe('superseded');
    expect(forceOn(today, { ...signed, state: 'returned' })).toBe('not signed');
  });
});

describe('two people at one answer', () => {
  const kept = { value: 'yes', notSureTicks: [], note: '', revision: 3, by: 'A. B.' };
  it('do not overwrite each other without seeing it', () => {
    expect(reviseAnswer(kept, { value: 'no', notSureTicks: [], note: '', seen: 2 })).toMatchObject({ ok: false, why: expect.stringContaining('A. B.') as string });
    expect(reviseAnswer(kept, { value: 'no', notSureTicks: [], note: '', seen: 3 })).toEqual({ ok: true, change: { kind: 'write', revision: 4 } });
    expect(reviseAnswer(kept, { value: null, notSureTicks: [], note: '', seen: 3 })).toEqual({ ok: true, change: { kind: 'clear', revision: 4 } });
    expect(reviseAnswer(null, { value: 'no', notSureTicks: [], note: '', seen: 0 })).toEqual({ ok: true, change: { kind: 'write', revision: 1 } });
  });
  it('do not disturb each other with the same answer, in whatever order its parts come', () => {
    expect(reviseAnswer({ ...kept, value: { a: 'yes', b: 'no' } }, { value: { b: 'no', a: 'yes' }, notSureTicks: [], note: '', seen: 1 })).toEqual({ ok: true, change: { kind: 'same' } });
  });
  it('never lose a change: of any two writers who saw the same revision only one gets through', () => {
    fc.assert(fc.property(fc.constantFrom('a', 'b', 'c'), fc.constantFrom('d', 'e'), fc.nat(5), (one, other, revision) => {
      const before = { value: 'x', notSureTicks: [], note: '', revision, by: 'A' };
      const first = reviseAnswer(before, { value: one, notSureTicks: [], note: '', seen: revision });
      expect(first.ok).toBe(true);
      const after = { value: one, notSureTicks: [], note: '', revision: first.ok && first.change.kind === 'write' ? first.change.revision : revision, by: 'A' };
      expect(reviseAnswer(after, { value: other, notSureTicks: [], note: '', seen: revision }).ok).toBe(false);
    }));
  });
});
