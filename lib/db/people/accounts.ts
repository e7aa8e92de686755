import { randomUUID } from 'node:crypto';
import type { Tx } from '../transaction';

/** As better-auth writes it for an account with a password. */
const WITH_PASSWORD = 'credential';

export interface NewAccount {
  readonly name: string;
  /** lower-cased */
  readonly email: string;
  readonly passwordHash: string;
  readonly at: Date;
}

/** Says whether somebody signs in with this address, lower-cased. */
export async function isEmailTaken(tx: Pick<Tx, 'user'>, email: string): Promise<boolean> {
  return (await tx.user.findUnique({ where: { email }, select: { id: true } })) !== null;
}

/** Makes what somebody signs in with, and the person it is of; returns the person's id. */
export async function createPerson(tx: Tx, { name, email, passwordHash, at }: NewAccount): Promise<string> {
  const userId = randomUUID();
  const dates = { createdAt: at, updatedAt: at };
  await tx.user.create({ data: { id: userId, name, email, ...dates } });
  await tx.signInMethod.create({ data: { id: randomUUID(), userId, accountId: userId, providerId: WITH_PASSWORD, password: passwordHash, ...dates } });
  const { id } = await tx.person.create({ data: { userId, name, createdAt: at }, select: { id: true } });
  return id;
}

/** Returns the hash of an account's password, or null when it has none. */
export async function passwordHashOf(tx: Pick<Tx, 'signInMethod'>, userId: string): Promise<string | null> {
  const method = await tx.signInMethod.findUnique({ where: { providerId_accountId: { providerId: WITH_PASSWORD, accountId: userId } }, select: { password: true } });
  return method?.password ?? null;
}

/**
 * Puts a new password in the place of the one whose hash is `before`, and ends the sessions of the account but `keep`.
 * @returns false when the password was changed in between; then nothing was done
 */
export async function replacePassword(tx: Tx, { userId, before, after, keep, at }: { userId: string; before: string; after: string; keep: string | null; at: Date }): Promise<boolean> {
  const changed = await tx.signInMethod.updateMany({ where: { userId, providerId: WITH_PASSWORD, password: before }, data: { password: after, updatedAt: at } });
  if (changed.count !== 1) return false;
  await endSessions(tx, userId, keep);
  return true;
}

/** Ends the sessions of an account, but for the one of this id. */
export async function endSessions(tx: Pick<Tx, 'signInSession'>, userId: string, keep: string | null): Promise<void> {
  await tx.signInSession.deleteMany({ where: { userId, ...(keep === null ? {} : { id: { not: keep } }) } });
}
