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

/**
 * Takes the lock of this installation's row until the end of the transaction: what only one may do at a time, such as
 * making the first school, begins with it. SQLite has one writer anyway; PostgreSQL lets the second wait here.
 */
export async function lockInstallation(tx: Pick<Db, 'installation'>): Promise<void> {
  const row = await tx.installation.findUnique({ where: { id: ONLY_ROW }, select: { lastStartedAt: true } });
  if (!row) throw new Error('The program was never started on this database');
  await tx.installation.update({ where: { id: ONLY_ROW }, data: row });
}
