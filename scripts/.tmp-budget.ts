import { readFileSync } from 'node:fs';
import { bestSetsOf, SET_DRAWS } from '/work/main/lib/core/best-sets';
import { readAssessment } from '/work/main/lib/interchange/read-assessment';
for (const e of ['good-hall', 'ordinary-classroom', 'bad-store']) {
  const r = readAssessment(readFileSync(`/work/main/public/examples/${e}.json`, 'utf8'));
  if (!r.ok) { console.log(r.faults); continue; }
  const t0 = performance.now();
  const s = bestSetsOf(r.content, r.document, { seed: 1, draws: SET_DRAWS });
  console.log(e, 'setup', Math.round(performance.now() - t0));
  console.log([...Array(25).keys()].map((b) => { const t = performance.now(); s(b); return Math.round(performance.now() - t); }).join(' '));
}
