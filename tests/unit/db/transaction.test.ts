import { describe, expect, it } from 'vitest';
import { openDatabase } from '@/lib/db/client';
import { runInTransaction } from '@/lib/db/transaction';
import { MetAnother, whyToTryAgain } from '@/lib/db/why-to-try-again';
import { databasesFor, ENGINES_HERE } from '@/tests/support/databases-for-tests';
import { memberForTest, schoolForTest } from '@/tests/support/school-for-tests';

describe.each(ENGINES_HERE)('a transaction on %s', (engine) => {
  const newDatabase = databasesFor(engine);

  it('is done again from its beginning when it met another, and tells of it in the end', async () => {
    const { db } = await newDatabase();
    let tries = 0;
    const work = runInTransaction(db, async () => { tries += 1; throw new MetAnother('always'); });
    await expect(work).rejects.toThrow('always');
    expect(tries).toBe(8);
  });

  it('is not done again for an error of its own', async () => {
    const { db } = await newDatabase();
    let tries = 0;
    const work = runInTransaction(db, async () => { tries += 1; throw new Error('mistake'); });
    await expect(work).rejects.toThrow('mistake');
    expect(tries).toBe(1);
  });

  it('takes the next number when the one it read was taken in between', async () => {
    const { db } = await newDatabase();
    const { scope, siteId, officer } = await schoolForTest(db);
    const at = new Date('2026-11-25T08:00:00.000Z');
    const assessment = await db.assessment.create({ data: { ...scope, siteId, title: 'Hall', createdAt: at } });
    const addVersion = () => runInTransaction(db, async (tx) => {
      const { _max } = await tx.assessmentVersion.aggregate({ where: { ...scope, assessmentId: assessment.id }, _max: { number: true } });
      const version = { ...scope, assessmentId: assessment.id, number: (_max.number ?? 0) + 1, state: 'draft', contentVersion: '2.0.0', preparedById: officer.personId, preparedByName: officer.name, createdAt: at };
      return (await tx.assessmentVersion.create({ data: version })).number;
    });
    expect((await Promise.all([addVersion(), addVersion(), addVersion()])).sort()).toEqual([1, 2, 3]);
  });

  it('does not lose an update of two who change two rows crosswise', async () => {
    const { db } = await newDatabase();
    const { scope } = await schoolForTest(db);
    const [{ personId: one }, { personId: two }] = [await memberForTest(db, scope, 'helper', 'S. T.'), await memberForTest(db, scope, 'helper', 'U. V.')];
    const bump = (order: readonly string[]) => runInTransaction(db, async (tx) => {
      for (const personId of order) await tx.membership.update({ where: { schoolId_personId: { ...scope, personId } }, data: { revision: { increment: 1 } } });
    });
    await Promise.all(Array.from({ length: 4 }, (_, index) => bump(index % 2 === 0 ? [one, two] : [two, one])));
    const members = await db.membership.findMany({ where: { ...scope, personId: { in: [one, two] } } });
    expect(members.map(({ revision }) => revision)).toEqual([5, 5]);
  });
});

describe('a transaction on SQLite', () => {
  const newDatabase = databasesFor('sqlite');

  it('is done again when another process wrote between its reading and its writing', async () => {
    const { db, url } = await newDatabase();
    const { scope } = await schoolForTest(db);
    const another = openDatabase(url);
    let tries = 0;
    const name = await runInTransaction(db, async (tx) => {
      tries += 1;
      const site = await tx.site.findFirstOrThrow({ where: scope });
      if (tries === 1) await another.site.updateMany({ where: scope, data: { name: 'Gym' } });
      await tx.site.updateMany({ where: scope, data: { name: `${site.name} 2` } });
      return `${site.name} 2`;
    });
    await another.$disconnect();
    expect({ name, tries }).toEqual({ name: 'Gym 2', tries: 2 });
    expect((await db.site.findFirstOrThrow({ where: scope })).name).toBe('Gym 2');
  });
});

describe('whyToTryAgain', () => {
  it.each([
    [{ code: 'P2034' }, 'met-another'], [{ code: 'P1008' }, 'met-another'], [{ code: 'P2002' }, 'taken'],
    [{ name: 'DriverAdapterError', cause: { kind: 'SocketTimeout' } }, 'met-another'],
    [{ name: 'DriverAdapterError', cause: { kind: 'TransactionWriteConflict' } }, 'met-another'],
    [{ code: 'P2025' }, null], [{ code: 2034 }, null], [new Error('x'), null], ['P2034', null], [null, null],
  ])('of %o is %s', (error, why) => {
    expect(whyToTryAgain(error)).toBe(why);
  });
});
