import { frequencyRulerScene, frequencyScaleScene } from '@/lib/charts/frequency-ruler';
import type { Sampled } from '@/lib/core/result';
import { SceneSvg } from './scene-svg';

interface FrequencyRulerProps {
  /** closed form, events a season */
  readonly mean: number;
  readonly range: Pick<Sampled, 'p05' | 'p95'>;
}

/** How often, on a ruler. The words beside it say the same, so it is hidden from those who hear the page. */
export function FrequencyRuler({ mean, range }: FrequencyRulerProps) {
  return <SceneSvg scene={frequencyRulerScene(mean, range)} told={false} />;
}

/** The scale over a column of rulers. */
export function FrequencyScale() {
  return <div className="rl-head" aria-hidden="true"><SceneSvg scene={frequencyScaleScene()} told={false} /></div>;
}
