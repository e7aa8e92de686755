import type { PdfFaultKind } from '../structure/pdf-fault';
import type { FileCheck, SignedCheck } from './file-check';

/** What a paper is that permits nothing, but records something. */
export type PaperAbout = 'incident';

/** What the school's records say of a document now. Whoever is offline cannot know it. */
export type DocumentStatus =
  | { readonly state: 'in-force'; readonly until?: Date; readonly about?: PaperAbout }
  | { readonly state: 'under-review'; readonly since: Date; readonly about?: PaperAbout }
  | { readonly state: 'suspended'; readonly since: Date; readonly reason: string }
  | { readonly state: 'superseded' | 'withdrawn' | 'ended'; readonly since: Date }
  /** this school has no such document: its records begin later, or were lost */
  | { readonly state: 'no-record' }
  | { readonly state: 'not-asked' };

/** One answer out of the file's own and the records'. No two of them look alike. */
export type FileVerdict =
  | { readonly kind: 'in-force'; readonly check: SignedCheck; readonly until?: Date; readonly about?: PaperAbout }
  | { readonly kind: 'under-review'; readonly check: SignedCheck; readonly since: Date; readonly about?: PaperAbout }
  | { readonly kind: 'suspended'; readonly check: SignedCheck; readonly since: Date; readonly reason: string }
  | { readonly kind: 'no-longer-in-force'; readonly check: SignedCheck; readonly why: 'superseded' | 'withdrawn' | 'ended'; readonly since: Date }
  | { readonly kind: 'status-unknown'; readonly check: SignedCheck; readonly why: 'no-record' | 'not-asked' }
  | { readonly kind: 'unfinished'; readonly check: SignedCheck }
  | { readonly kind: 'changed' | 'foreign'; readonly check: SignedCheck }
  | { readonly kind: 'unsigned' }
  | { readonly kind: 'unreadable'; readonly fault: PdfFaultKind };

/** Only an unchanged and finished file can be in force: for any other the records are not asked. */
export function verdictOf(check: FileCheck, status: DocumentStatus): FileVerdict {
  if (check.state === 'unsigned') return { kind: 'unsigned' };
  if (check.state === 'unreadable') return { kind: 'unreadable', fault: check.fault };
  if (check.state !== 'unchanged') return { kind: check.state, check };
  if (check.unsignedRoles.length > 0) return { kind: 'unfinished', check };
  switch (status.state) {
    case 'in-force': return { kind: 'in-force', check, until: status.until, about: status.about };
    case 'under-review': return { kind: 'under-review', check, since: status.since, about: status.about };
    case 'suspended': return { kind: 'suspended', check, since: status.since, reason: status.reason };
    case 'superseded':
    case 'withdrawn':
    case 'ended': return { kind: 'no-longer-in-force', check, why: status.state, since: status.since };
    case 'no-record':
    case 'not-asked': return { kind: 'status-unknown', check, why: status.state };
  }
}
