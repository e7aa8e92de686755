import { randomUUID } from 'node:crypto';
import type { Paper } from '@/lib/papers/paper';
import type { Make } from './made-once';

type Path = `/${string}`;

/** Whose a job is. Nobody else sees it. */
export interface JobOwner { readonly schoolId: string; readonly personId: string }

/** A paper to be made, and what becomes of it then. */
export interface PaperWork {
  /** The same while one is being made means the same work: it is joined, not begun again. */
  readonly key: string;
  /** what is made, as its page says it */
  readonly title: string;
  /** where it was asked for */
  readonly back: Path;
  readonly paper: Paper;
  /** Signs and keeps what was made. Runs outside of any request. Nothing is kept before it says so. */
  readonly keep: (made: Uint8Array) => Promise<{ readonly ok: true; readonly then: Path } | { readonly ok: false; readonly why: string }>;
}

export type JobPhase = 'setting' | 'keeping' | 'done' | 'refused' | 'failed' | 'cancelled';

/** How far a paper is. */
export interface PaperJob {
  readonly id: string;
  readonly title: string;
  readonly back: Path;
  readonly phase: JobPhase;
  /** pages that are set; nobody knows how many there will be before the end */
  readonly pages: number;
  /** where it leads on to, once it is done */
  readonly then: Path | null;
  /** why it was refused, or the reference of what failed */
  readonly why: string;
}

type Running = { -readonly [Key in keyof PaperJob]: PaperJob[Key] } & { readonly owner: JobOwner; readonly key: string; readonly stop: AbortController; endedAt: number | null };

interface JobSettings {
  readonly make: Make;
  /** takes note of what nobody expected, and returns the reference it is found by */
  readonly note: (error: unknown) => string;
  readonly now?: () => number;
  /** how long the end of a job is told, ms */
  readonly toldFor?: number;
}

/** Papers that are being made, each for somebody who sees how far it is and can give it up until it is being kept. */
export function createPaperJobs({ make, note, now = Date.now, toldFor = 600_000 }: JobSettings) {
  const jobs = new Map<string, Running>();
  const forget = (): void => { for (const [id, { endedAt }] of jobs) if (endedAt !== null && now() - endedAt > toldFor) jobs.delete(id); };
  const mine = (owner: JobOwner, id: string): Running | undefined => {
    const job = jobs.get(id);
    return job?.owner.schoolId === owner.schoolId && job.owner.personId === owner.personId ? job : undefined;
  };

  return {
    /** Begins to make a paper, or joins the same work. @returns the job's id */
    begin(owner: JobOwner, work: PaperWork): string {
      forget();
      const same = [...jobs.values()].find((job) => job.key === work.key && job.endedAt === null && mine(owner, job.id) === job);
      if (same !== undefined) return same.id;
      const { schoolId, personId } = owner;
      const job: Running = { id: randomUUID(), owner: { schoolId, personId }, key: work.key, title: work.title, back: work.back, phase: 'setting', pages: 0, then: null, why: '', stop: new AbortController(), endedAt: null };
      jobs.set(job.id, job);
      void run(job, work, make, note).finally(() => { job.endedAt = now(); });
      return job.id;
    },

    /** How far it is; null when the person has no such job, or it ended long ago. */
    find(owner: JobOwner, id: string): PaperJob | null {
      const job = mine(owner, id);
      return job === undefined ? null : { id: job.id, title: job.title, back: job.back, phase: job.phase, pages: job.pages, then: job.then, why: job.why };
    },

    /** Gives it up. @returns whether it was not too late: what is being kept cannot be held up any more */
    cancel(owner: JobOwner, id: string): boolean {
      const job = mine(owner, id);
      if (job?.phase !== 'setting') return false;
      job.phase = 'cancelled';
      job.stop.abort();
      return true;
    },
  };
}

async function run(job: Running, { paper, keep }: PaperWork, make: Make, note: JobSettings['note']): Promise<void> {
  try {
    const made = await make(paper, { signal: job.stop.signal, onPage: (page) => { job.pages = Math.max(job.pages, page); } });
    if (job.stop.signal.aborted) return;
    job.phase = 'keeping';
    const kept = await keep(made);
    if (kept.ok) Object.assign(job, { phase: 'done', then: kept.then });
    else Object.assign(job, { phase: 'refused', why: kept.why });
  } catch (error) {
    if (job.stop.signal.aborted) return;
    Object.assign(job, { phase: 'failed', why: note(error) });
  }
}
