import { z } from 'zod';

/** Where an assessment stands on its way; nothing is ever taken back to an earlier version. */
export const AssessmentStateSchema = z.enum(['draft', 'with-officer', 'returned', 'signed', 'superseded', 'withdrawn']);
export type AssessmentState = z.output<typeof AssessmentStateSchema>;

/** What decides who may do what with one version of an assessment. */
export interface Standing {
  readonly state: AssessmentState;
  /** the person who prepares it and signs first */
  readonly preparerId: string;
  /** whether the preparer has signed the very paper that the officer would sign */
  readonly preparerSigned: boolean;
  /** suspended by the officer, with reason; only a signed one can be */
  readonly suspended: boolean;
}

/** Yes with what follows, or no in words that a person can act on. */
export type Decision<Change> = { readonly ok: true; readonly change: Change } | { readonly ok: false; readonly why: string };

export const yes = <Change>(change: Change): Decision<Change> => ({ ok: true, change });
export const no = (why: string): { readonly ok: false; readonly why: string } => ({ ok: false, why });

/** Whether answers may be changed: nobody edits what lies with the officer or has been signed. */
export function isOpen(state: string): boolean { return state === 'draft' || state === 'returned'; }
