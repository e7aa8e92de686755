import type { Db } from './client';

/** The table has one row; its id is fixed so that two starts at once cannot make two. */
const ONLY_ROW = 'this';

export interface Start {
  /** Version of the program that starts. */
  version: string;
  at: Date;
}

/** Notes that the program starts: makes the row at the first start, afterwards moves `lastStartedAt`. */
export async function recordStart(db: Db, start: Start): Promise<void> {
  await db.installation.upsert({
    where: { id: ONLY_ROW },
    create: { id: ONLY_ROW, createdAt: start.at, createdByVersion: start.version, lastStartedAt: start.at },
    update: { lastStartedAt: start.at },
  });
}

export interface Installation {
  createdAt: Date;
  createdByVersion: string;
  lastStartedAt: Date;
}

/** Returns what is known about this installation, or null when the program was never started on this database. */
export async function getInstallation(db: Db): Promise<Installation | null> {
  return db.installation.findUnique({
    where: { id: ONLY_ROW },
    select: { createdAt: true, createdByVersion: true, lastStartedAt: true },
  });
}
