import { describe, expect, it, onTestFinished } from 'vitest';
import type { Db } from '@/lib/db/client';
import { TRIES_PER_WINDOW } from '@/lib/people/sign-in-attempts';
import { throttled } from '@/lib/server/auth/throttle';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';

const holder = globalThis as typeof globalThis & { sandbucketDatabase?: Db };

describe.each(ENGINES_HERE)('looking at passwords on %s', (engine) => {
  const newDatabase = databasesFor(engine);
  const useDatabase = async () => {
    const { db } = await newDatabase();
    holder.sandbucketDatabase = db;
    onTestFinished(() => { holder.sandbucketDatabase = undefined; });
    return db;
  };

  it('of forty tries at the same moment ten are looked at, and other accounts are not held up', async () => {
    await useDatabase();
    let looked = 0;
    const attempt = () => throttled('one', () => Promise.resolve((looked += 1) === 0), (right) => right);
    const answers = await Promise.all(Array.from({ length: 40 }, attempt));
    expect(looked).toBeLessThanOrEqual(TRIES_PER_WINDOW);
    expect(answers.filter(({ ok }) => ok)).toHaveLength(looked);
    expect(await throttled('two', () => Promise.resolve(true), (right) => right)).toEqual({ ok: true, result: true });
  });

  it('refused tries do not make the wait longer, and a right password forgets the wrong ones', async () => {
    const db = await useDatabase();
    const attempt = (right: boolean) => throttled('one', () => Promise.resolve(right), (result) => result);
    for (let tries = 0; tries < TRIES_PER_WINDOW - 1; tries += 1) await attempt(false);
    expect(await attempt(true)).toMatchObject({ ok: true });
    expect(await db.signInAttempt.count()).toBe(0);
    for (let tries = 0; tries < TRIES_PER_WINDOW + 5; tries += 1) await attempt(false);
    expect(await db.signInAttempt.count()).toBe(TRIES_PER_WINDOW);
    expect(await attempt(true)).toMatchObject({ ok: false });
  });
});
