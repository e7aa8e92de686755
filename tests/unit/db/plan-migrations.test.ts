import { describe, expect, it } from 'vitest';
import type { Migration, RecordedMigration } from '@/lib/db/migrate/migration';
import { planMigrations } from '@/lib/db/migrate/plan-migrations';
import { refusalInWords } from '@/lib/db/migrate/refusal-in-words';

const file = (name: string): Migration => ({ name, sql: '', checksum: `sum of ${name}` });
const applied = (name: string, change: Partial<RecordedMigration> = {}): RecordedMigration => ({
  migration_name: name, checksum: `sum of ${name}`, finished_at: 1, rolled_back_at: null, ...change,
});

describe('planMigrations', () => {
  it('takes what is not recorded, in the order of the files', () => {
    const plan = planMigrations([file('1'), file('2'), file('3')], [applied('1')]);
    expect(plan).toEqual({ ok: true, pending: [file('2'), file('3')] });
  });

  it('takes a migration again that was taken back', () => {
    const plan = planMigrations([file('1')], [applied('1', { finished_at: null, rolled_back_at: 2 })]);
    expect(plan).toEqual({ ok: true, pending: [file('1')] });
  });

  it.each([
    ['changed', [file('1')], [applied('1', { checksum: 'another' })]],
    ['unknown', [file('1')], [applied('1'), applied('9')]],
    ['failed-earlier', [file('1')], [applied('1', { finished_at: null })]],
  ] as const)('refuses a history that is %s, and says so in words', (kind, files, recorded) => {
    const plan = planMigrations(files, recorded);
    if (plan.ok) throw new Error('was not refused');
    expect(plan.refusal.kind).toBe(kind);
    expect(refusalInWords(plan.refusal)).toContain('migration' in plan.refusal ? plan.refusal.migration : '');
  });
});
