import type { Content } from '@/lib/content/model';
import { meanFailure } from '@/lib/core/risk/mean-failure';

const known = new WeakMap<Content, Readonly<Record<string, number>>>();

/** Mean probability of failure of every control once it is in place, by id; worked out once for an edition. */
export function inPlaceFailures(content: Content): Readonly<Record<string, number>> {
  const before = known.get(content);
  if (before !== undefined) return before;
  const failures = Object.fromEntries(content.controls.map((control) => [control.id, meanFailure(control, 'in place')]));
  known.set(content, failures);
  return failures;
}
