import { aboutTime } from '@/app/_components/questions/about-time';
import type { ProgressSection } from '@/app/_components/ui/progress';
import type { Walk } from '@/lib/assessments/walk';

/** The sections of a walk as the progress line draws them. */
export function progressOf({ resolution }: Walk): readonly ProgressSection[] {
  return resolution.progress.filter(({ asked }) => asked > 0).map(({ section, title, asked, answered, notSure }) => ({ id: section, title, questions: asked, answered, notSure }));
}

/** How long what is open takes; undefined where the edition does not say. */
export function timeLeft({ secondsLeft }: Walk): string | undefined {
  if (secondsLeft === null) return undefined;
  return secondsLeft === 0 ? 'nothing left open' : `${aboutTime(secondsLeft)} left`;
}
