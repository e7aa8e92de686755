import { describe, expect, it } from 'vitest';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import { fingerprintOfPaper, packPaper, unpackPaper } from '@/lib/server/papers/paper-data';
import { assessmentFacts } from '@/tests/support/assessment-facts';
import { referenceDocument } from '@/tests/support/reference-venues';

const facts = assessmentFacts(referenceDocument('good-hall'));
const paper = assessmentPaper(facts);

describe('a paper as data', () => {
  it('comes back as it was kept, pictures included, in far fewer bytes', () => {
    expect(unpackPaper(packPaper(paper))).toEqual(JSON.parse(JSON.stringify(paper)));
    expect(packPaper(paper).length).toBeLessThan(JSON.stringify(paper).length / 3);
  });

  it('has another fingerprint as soon as a word of it is another: what was read is what is signed', () => {
    const [action] = facts.actions;
    const other = assessmentPaper({ ...facts, actions: [{ ...action!, owner: 'somebody else' }] });
    expect(fingerprintOfPaper(assessmentPaper(facts))).toBe(fingerprintOfPaper(paper));
    expect(fingerprintOfPaper(other)).not.toBe(fingerprintOfPaper(paper));
  });
});
