import type { z } from 'zod';
import type { Fault } from './form-state';

/**
 * Returns zod's issues as faults, at most one per field: the first says enough until it is put right.
 * A fault inside a list or an object belongs to the field as a whole.
 */
export function faultsOfIssues(issues: readonly z.core.$ZodIssue[]): readonly Fault[] {
  const faults = new Map<string | null, Fault>();
  for (const issue of issues) {
    const [name] = issue.path;
    const field = name === undefined ? null : String(name);
    if (!faults.has(field)) faults.set(field, { field, message: issue.message });
  }
  return [...faults.values()];
}
