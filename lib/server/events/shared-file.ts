import 'server-only';
import { documentOfNumber } from '@/lib/db/documents/document-status';
import type { StoredFile } from '@/lib/db/documents/read-document';
import { countOpened, findEventLink } from '@/lib/db/events/links';
import { sharedDocument } from '@/lib/db/events/shared-document';
import { type FileStanding, fileStanding } from '@/lib/events/file-standing';
import { whyEnded } from '@/lib/events/links';
import type { Paper } from '@/lib/papers/paper';
import { dayWords, momentWords } from '@/lib/wording/dates';
import { database } from '../database';
import { unpackPaper } from '../papers/paper-data';
import { currentSchool } from '../people/current-school';
import { sealOfToken } from './link-token';

/** What a venue sees by its link: one file and whether it still holds. */
export interface SharedFile {
  readonly school: string;
  readonly title: string;
  readonly number: string;
  readonly standing: FileStanding;
  readonly checkedAt: string;
  readonly until: string;
  readonly signatures: readonly string[];
  /** null when nobody is to read on in it */
  readonly paper: Paper | null;
}

type Opened = { readonly ok: true; readonly shared: SharedFile; readonly file: StoredFile; /** counts that it was opened */ readonly count: () => Promise<void> } | { readonly ok: false; readonly reason: string };

/** Opens a link to a file. The link works until it ends or is taken back, whatever becomes of the file: it says so. */
export async function openSharedFile(token: string): Promise<Opened> {
  const now = new Date();
  const link = await findEventLink(database(), sealOfToken(token));
  const why = whyEnded(link, 'see-document', now);
  if (why !== null || link === null) return { ok: false, reason: why ?? '' };
  const [document, school] = await Promise.all([sharedDocument(database(), link), currentSchool(link)]);
  if (document === null) throw new Error(`link ${link.id} leads to no file that can be read`);
  const record = await documentOfNumber(database(), document.number);
  const { event } = document;
  const day = (at: Date | null | undefined): string | null => (at === null || at === undefined ? null : dayWords(at, school));
  const standing = fileStanding({
    withdrawnOn: day(record?.withdrawnAt), withdrawnReason: document.withdrawnReason, replacedOn: day(record?.replacedAt), endedOn: event.endsAt < now ? day(event.endsAt) : null,
    suspendedOn: day(event.version?.suspensions[0]?.at), assessmentGone: event.version !== null && (event.version.withdrawnAt !== null || event.version.supersededAt !== null),
  });
  return {
    ok: true, file: document.file,
    count: () => countOpened(database(), link, now),
    shared: {
      school: school.schoolName, title: document.title, number: document.number, standing, checkedAt: momentWords(now, school), until: momentWords(link.expiresAt, school),
      signatures: document.signatures.map(({ signerName, signerPost, at }) => `${signerName}, ${signerPost}, ${dayWords(at, school)}`),
      paper: standing.shown ? unpackPaper(document.data) : null,
    },
  };
}
