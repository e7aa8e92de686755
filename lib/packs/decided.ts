import type { AuditEvent } from '@/lib/audit/event';
import type { Fault } from '@/lib/forms/form-state';

/** What follows from a command: what is to be changed and what stands in the log of it, or why not, in words. */
export type Decided<Change> =
  | { readonly ok: true; readonly change: Change; readonly events: readonly AuditEvent[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** A refusal that belongs to a field, or to the form as a whole. */
export function refusedFor(field: string | null, message: string): { readonly ok: false; readonly faults: readonly Fault[] } {
  return { ok: false, faults: [{ field, message }] };
}
