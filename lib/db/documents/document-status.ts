import type { Db } from '../client';

/** What the records say of a paper now. Plain facts: who asks decides what they mean. */
export interface DocumentRecord {
  readonly number: string;
  readonly title: string;
  readonly kind: string;
  readonly schoolName: string;
  readonly timeZone: string;
  readonly locale: string;
  /** made: nobody signs it; part-signed, signed */
  readonly state: string;
  readonly createdAt: Date;
  readonly replacedAt: Date | null;
  readonly withdrawnAt: Date | null;
  readonly supersededAt: Date | null;
  /** last calendar day, YYYY-MM-DD */
  readonly reviewBy: string | null;
  /** of an event's papers: when it is over, which is the end of them */
  readonly eventEndsAt: Date | null;
  readonly suspendedAt: Date | null;
  readonly suspendedWhy: string | null;
  /** also: since when an incident is open again */
  readonly reviewAskedAt: Date | null;
}

const WITH_STATUS = {
  school: { select: { name: true, timeZone: true, locale: true } },
  version: {
    select: {
      state: true, supersededAt: true, reviewBy: true, withdrawnAt: true,
      suspensions: { where: { liftedAt: null }, orderBy: { at: 'asc' }, take: 1, select: { at: true, reason: true } },
      reviewRequests: { where: { settledAt: null }, orderBy: { at: 'asc' }, take: 1, select: { at: true } },
    },
  },
  incident: { select: { followUps: { where: { kind: 'reopened' }, orderBy: { at: 'desc' }, take: 1, select: { at: true } } } },
  // A venue's file rests on the assessment of its site, so it is suspended with it.
  event: { select: { endsAt: true, cancelledAt: true, version: { select: { suspensions: { where: { liftedAt: null }, orderBy: { at: 'asc' }, take: 1, select: { at: true, reason: true } } } } } },
} as const;

/** The paper that a file is, by the SHA-256 of its bytes, in whatever school; null when no school here has it. */
export async function documentOfFile(db: Db, sha256: string): Promise<DocumentRecord | null> {
  const revision = await db.documentRevision.findFirst({ where: { sha256 }, include: { document: { include: WITH_STATUS } } });
  return revision === null ? null : record(revision.document);
}

/** The paper of a number, as it is printed on every page. */
export async function documentOfNumber(db: Db, number: string): Promise<DocumentRecord | null> {
  const document = await db.document.findUnique({ where: { number }, include: WITH_STATUS });
  return document === null ? null : record(document);
}

interface Row {
  readonly number: string; readonly title: string; readonly kind: string; readonly state: string; readonly createdAt: Date; readonly replacedAt: Date | null; readonly withdrawnAt: Date | null;
  readonly school: { readonly name: string; readonly timeZone: string; readonly locale: string };
  readonly version: {
    readonly supersededAt: Date | null; readonly reviewBy: string | null; readonly withdrawnAt: Date | null;
    readonly suspensions: readonly { readonly at: Date; readonly reason: string }[]; readonly reviewRequests: readonly { readonly at: Date }[];
  } | null;
  readonly incident: { readonly followUps: readonly { readonly at: Date }[] } | null;
  readonly event: { readonly endsAt: Date; readonly cancelledAt: Date | null; readonly version: { readonly suspensions: readonly { readonly at: Date; readonly reason: string }[] } | null } | null;
}

function record({ school, version, incident, event, ...row }: Row): DocumentRecord {
  const [reopened] = incident?.followUps ?? [];
  const [suspension] = version?.suspensions ?? event?.version?.suspensions ?? [];
  return {
    number: row.number, title: row.title, kind: row.kind, state: row.state, createdAt: row.createdAt, replacedAt: row.replacedAt,
    schoolName: school.name, timeZone: school.timeZone, locale: school.locale,
    withdrawnAt: row.withdrawnAt ?? version?.withdrawnAt ?? event?.cancelledAt ?? null,
    supersededAt: version?.supersededAt ?? null,
    reviewBy: version?.reviewBy ?? null,
    eventEndsAt: event?.endsAt ?? null,
    suspendedAt: suspension?.at ?? null,
    suspendedWhy: suspension?.reason ?? null,
    reviewAskedAt: version?.reviewRequests[0]?.at ?? (reopened !== undefined && reopened.at > row.createdAt ? reopened.at : null),
  };
}
