import fc from 'fast-check';
import { edition2 } from '@/lib/content/edition-2';
import { score } from '@/lib/core/score';
import { readAssessment } from '@/lib/interchange/read-assessment';
import { arbitraryAssessment } from '@/tests/support/arbitrary-assessment';
import { writeFileSync } from 'node:fs';
const docs = fc.sample(arbitraryAssessment(edition2), { numRuns: 40, seed: 5 });
for (const [i, d] of docs.entries()) {
  const r = readAssessment(JSON.stringify(d), edition2);
  if (!r.ok) { console.log(i, r.faults[0]); continue; }
  writeFileSync(`/tmp/iqdoc-last.json`, JSON.stringify(d));
  const t = performance.now();
  score(edition2, r.document, { seed: 1, draws: 100, inputHash: '' });
  console.log(i, 'budget', r.document.effortBudget, 'score', (performance.now() - t).toFixed(0));
}
