import 'server-only';
import type { Actor } from '../actor';
import { faultOfError } from '../forms/fault-of-error';
import { makePaper } from './paper-desk';
import { createPaperJobs, type PaperJob, type PaperWork } from './paper-jobs';

type Jobs = ReturnType<typeof createPaperJobs>;
const holder = globalThis as typeof globalThis & { sandbucketPaperJobs?: Jobs };

/** Those of this process; on globalThis, because pages and actions are bundled apart. */
const jobs = (): Jobs => (holder.sandbucketPaperJobs ??= createPaperJobs({ make: makePaper, note: (error) => faultOfError(error).message }));

/** Begins to make a paper, or joins the same work of the same person. @returns the address of the page that shows how far it is and then leads on */
export function beginPaper(actor: Actor, work: PaperWork): `/${string}` { return `/papers/${jobs().begin(actor, work)}`; }

/** How far a paper of the actor's own is; null when there is no such making. */
export function paperJob(actor: Actor, id: string): PaperJob | null { return jobs().find(actor, id); }

/** Gives a making of the actor's own up. @returns whether it was not too late */
export function cancelPaper(actor: Actor, id: string): boolean { return jobs().cancel(actor, id); }
