import { randomUUID } from 'node:crypto';
import type { Db } from '../client';

/** Tries at passwords, by account. Each is written by itself, before the password is looked at. */
export class SignInAttempts {
  constructor(private readonly db: Db) {}

  /** Notes a try and returns its id. */
  async note(bucket: string, at: Date): Promise<string> {
    const { id } = await this.db.signInAttempt.create({ data: { id: randomUUID(), bucket, at }, select: { id: true } });
    return id;
  }

  /** Returns when the account was tried after `since`, ms since 1970. */
  async timesSince(bucket: string, since: Date): Promise<readonly number[]> {
    const rows = await this.db.signInAttempt.findMany({ where: { bucket, at: { gt: since } }, select: { at: true } });
    return rows.map(({ at }) => at.getTime());
  }

  /** Takes a try back: one that was refused without looking at the password. */
  async takeBack(id: string): Promise<void> {
    await this.db.signInAttempt.deleteMany({ where: { id } });
  }

  /** Forgets the tries of an account whose password was right, and all that are too old to count. */
  async settle(bucket: string, tooOld: Date): Promise<void> {
    await this.db.signInAttempt.deleteMany({ where: { OR: [{ bucket }, { at: { lt: tooOld } }] } });
  }
}
