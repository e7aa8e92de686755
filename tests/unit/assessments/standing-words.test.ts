import { describe, expect, it } from 'vitest';
import { type StandingFacts, standingWords } from '@/lib/assessments/standing-words';

const draft: StandingFacts = { state: 'draft', force: 'not signed', preparer: 'K. M.', officer: null, preparerSigned: false, openStops: 0, until: null, suspended: null, reviewAsked: null, supersededBy: null };
const withOfficer: StandingFacts = { ...draft, state: 'with-officer', officer: 'R. O.', preparerSigned: true };
const signed: StandingFacts = { ...withOfficer, state: 'signed', force: 'in force', until: '31 July 2027' };

describe('where an assessment stands', () => {
  it('names who does what next in every state', () => {
    expect(standingWords(draft).next).toContain('K. M. prepares it');
    expect(standingWords({ ...draft, state: 'returned' }).next).toContain('K. M. answers');
    expect(standingWords(withOfficer).next).toContain('R. O. reads it, and signs');
    expect(standingWords({ ...withOfficer, openStops: 2 }).next).toContain('2 stop conditions are open, so it cannot be signed yet');
    expect(standingWords({ ...withOfficer, preparerSigned: false }).next).toContain('K. M. reads the changed paper');
  });

  it('looks settled only while it is in force, and says the worst first', () => {
    expect(standingWords(signed)).toMatchObject({ kind: 'done', title: 'In force until 31 July 2027' });
    const suspended = { on: '25 November 2026', by: 'R. O.', reason: 'Smoke on Friday.' };
    const reviewAsked = { on: '24 November 2026', reason: 'Incident 3' };
    expect(standingWords({ ...signed, suspended, reviewAsked, force: 'suspended' })).toMatchObject({ kind: 'act', title: 'Suspended since 25 November 2026' });
    expect(standingWords({ ...signed, force: 'run out', reviewAsked }).title).toContain('Its time ended');
    expect(standingWords({ ...signed, force: 'review asked', reviewAsked })).toMatchObject({ kind: 'not sure' });
    expect(standingWords({ ...signed, state: 'superseded', supersededBy: 3 }).title).toContain('version 3 took its place');
    expect(standingWords({ ...signed, state: 'withdrawn' }).title).toBe('Withdrawn');
  });
});
