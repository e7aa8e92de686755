import type { AuditEvent } from '@/lib/audit/event';
import type { Fault } from '@/lib/forms/form-state';

/** What follows from a command: what is to be written and what stands in the log of it, or why not, in words. */
export type Decided<Change> =
  | { readonly ok: true; readonly change: Change; readonly events: readonly AuditEvent[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export const refusedFor = (field: string | null, message: string): { readonly ok: false; readonly faults: readonly Fault[] } => ({ ok: false, faults: [{ field, message }] });
