import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { CHAIN_START, nextEntry, type ChainEntry } from '@/lib/audit/chain';
import { EVENT_SCHEMAS, isAuditKind, type AuditEvent } from '@/lib/audit/event';
import { verifyChain } from '@/lib/audit/verify-chain';

const BY = { schoolId: 's1', personId: 'p1', name: 'R. O.' };
const AT = new Date('2026-11-25T08:00:00.000Z');
const renamed = (to: string): AuditEvent => ({ kind: 'site.changed', subjectId: 'site1', data: { changes: { name: { from: 'Hall', to } } } });

function chainOf(length: number): ChainEntry[] {
  const entries: ChainEntry[] = [];
  for (let index = 0; index < length; index += 1) entries.push(nextEntry(entries.at(-1) ?? CHAIN_START, BY, AT, renamed(`Hall ${index}`)));
  return entries;
}

const withEntry = (entries: readonly ChainEntry[], sequence: number, change: Partial<ChainEntry>) =>
  entries.map((entry) => (entry.sequence === sequence ? { ...entry, ...change } : entry));

describe('an entry', () => {
  it('holds a hash that anybody can make again from its columns', () => {
    const [entry] = chainOf(1);
    const text = '{"actorId":"p1","actorName":"R. O.","at":"2026-11-25T08:00:00.000Z","dataJson":"{\\"changes\\":{\\"name\\":{\\"from\\":\\"Hall\\",\\"to\\":\\"Hall 0\\"}}}",'
      + `"kind":"site.changed","previousHash":"${'0'.repeat(64)}","schoolId":"s1","sequence":1,"subjectId":"site1"}`;
    expect(entry?.hash).toBe(createHash('sha256').update(text).digest('hex'));
  });

  it('is refused when its data is not of the shape of its kind', () => {
    const tooMuch: AuditEvent = { kind: 'incident.closed', subjectId: 'i1', data: Object.assign({ note: 'done' }, { pupil: 'A. B.' }) };
    expect(() => nextEntry(CHAIN_START, BY, AT, tooMuch)).toThrow('pupil');
  });
});

describe('a chain', () => {
  it('of untouched entries ends at the last of them', () => {
    const entries = chainOf(5);
    expect(verifyChain(entries)).toEqual({ ok: true, end: { sequence: 5, hash: entries[4]?.hash } });
    expect(verifyChain([])).toEqual({ ok: true, end: CHAIN_START });
  });

  it('can be checked in parts', () => {
    const entries = chainOf(5);
    const first = verifyChain(entries.slice(0, 2));
    expect(first.ok && verifyChain(entries.slice(2), first.end)).toEqual(verifyChain(entries));
  });

  const columns: Partial<ChainEntry>[] = [
    { schoolId: 's2' }, { at: new Date('2026-11-25T08:00:00.001Z') }, { kind: 'area.changed' }, { actorId: null }, { actorId: 'p2' },
    { actorName: 'K. M.' }, { subjectId: 'site2' }, { dataJson: '{}' }, { hash: 'f'.repeat(64) },
  ];
  it.each(columns)('shows the entry in which %o was written over', (change) => {
    expect(verifyChain(withEntry(chainOf(5), 3, change))).toEqual({ ok: false, sequence: 3, fault: 'altered' });
  });

  it('shows an entry that was taken out, moved, or put in', () => {
    const entries = chainOf(5);
    expect(verifyChain(entries.filter(({ sequence }) => sequence !== 3))).toEqual({ ok: false, sequence: 4, fault: 'gap' });
    expect(verifyChain(entries.slice(1))).toEqual({ ok: false, sequence: 2, fault: 'gap' });
    const closedUp = entries.filter(({ sequence }) => sequence !== 3).map((entry, index) => ({ ...entry, sequence: index + 1 }));
    expect(verifyChain(closedUp)).toEqual({ ok: false, sequence: 3, fault: 'unlinked' });
    const forged = nextEntry({ sequence: 2, hash: 'a'.repeat(64) }, BY, AT, renamed('Hall X'));
    expect(verifyChain(withEntry(entries, 3, forged))).toEqual({ ok: false, sequence: 3, fault: 'unlinked' });
  });

  it('shows an entry that was written again with a fitting hash, at the one after it', () => {
    const entries = chainOf(5);
    const forged = nextEntry({ sequence: 2, hash: entries[1]?.hash ?? '' }, BY, AT, renamed('Hall X'));
    expect(verifyChain(withEntry(entries, 3, forged))).toEqual({ ok: false, sequence: 4, fault: 'unlinked' });
  });
});

describe('the kinds of events', () => {
  it('are named after what they happen to, and none is lost where the parts are put together', () => {
    const kinds = Object.keys(EVENT_SCHEMAS);
    expect(kinds.filter((kind) => !/^[a-z-]+\.[a-z-]+$/.test(kind))).toEqual([]);
    expect(kinds.length).toBeGreaterThan(80);
    expect(isAuditKind('pack.checked')).toBe(true);
    expect(isAuditKind('toString')).toBe(false);
  });
});
