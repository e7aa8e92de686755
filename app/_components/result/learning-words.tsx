import type { RateLearning } from '@/lib/core/result';
import { rounded } from '@/lib/wording/numbers';

interface LearningProps { readonly learning: RateLearning; readonly unit: string; /** of the headings around it */ readonly level: 2 | 3 }

/** How the school's own record moved what was assumed before it. */
export function LearningWords({ learning, unit, level }: LearningProps) {
  const Heading = level === 2 ? 'h3' : 'h4';
  const { prior, record, posterior } = learning;
  return (
    <div className="stack">
      <Heading>Your own record counts</Heading>
      <p>
        Assumed before, with no control at all: {oneIn(prior.mean)} ({oneIn(prior.p95)} to {oneIn(prior.p05)}). You had {record.events} in {rounded(record.exposure)} ({unit}).
        Now: {oneIn(posterior.mean)} ({oneIn(posterior.p95)} to {oneIn(posterior.p05)}).
      </p>
      {record.assumedToday ? <p className="small muted">Your record does not say how well things were held while it was made, so today’s controls were taken for it.</p> : null}
    </div>
  );
}

const oneIn = (rate: number): string => (rate > 0 ? `1 in ${rounded(1 / rate)}` : 'never');
