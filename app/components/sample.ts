import { bestSetsOf } from '@/lib/core/best-sets';
import { score } from '@/lib/core/score';
import { readAssessment } from '@/lib/interchange/read-assessment';
import classroom from '@/public/examples/ordinary-classroom.json';

/** A scored room to draw the charts with. Real figures: a chart that only fits made-up ones does not fit. */
export function sampleRoom() {
  const read = readAssessment(JSON.stringify(classroom));
  if (!read.ok) throw new Error(read.faults.map((fault) => `${fault.path}: ${fault.problem}`).join('; '));
  const options = { seed: 1, draws: 1000, inputHash: read.inputHash };
  const first = score(read.content, read.document, options);
  const planned = first.bestSet.controls;
  const sets = bestSetsOf(read.content, read.document, { seed: options.seed, draws: options.draws });
  return {
    content: read.content,
    result: score(read.content, { ...read.document, planned }, options),
    sets: [0, 1, 2, 3, 4, 6, 8, 10, 12].map((budget) => sets(budget)),
  };
}
