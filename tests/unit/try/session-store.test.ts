import { describe, expect, it } from 'vitest';
import { NOTHING_OPEN, pageReducer, type PageState } from '@/app/try/_state/page-state';
import { keep, readKept, type TabStorage } from '@/app/try/_state/session-store';

const memory = (): TabStorage & { readonly map: Map<string, string> } => {
  const map = new Map<string, string>();
  return { map, getItem: (key) => map.get(key) ?? null, setItem: (key, value) => { map.set(key, value); }, removeItem: (key) => { map.delete(key); } };
};
const state: PageState = pageReducer(NOTHING_OPEN, { type: 'opened', whole: { title: 'Hall', answers: {} }, source: { kind: 'own', name: 'hall.json' } });

describe('what the tab keeps over a reload', () => {
  it('gives back what was kept', () => {
    const storage = memory();
    expect(keep(storage, state)).toBeNull();
    expect(readKept(storage)).toEqual({ ok: true, state });
  });

  it('keeps nothing when nothing is open', () => {
    const storage = memory();
    keep(storage, state);
    keep(storage, NOTHING_OPEN);
    expect(storage.map.size).toBe(0);
    expect(readKept(storage)).toEqual({ ok: true, state: NOTHING_OPEN });
  });

  it('says so in words when what was kept is not ours or not JSON', () => {
    const storage = memory();
    keep(storage, state);
    for (const text of ['{"open":7}', '{']) {
      for (const key of storage.map.keys()) storage.map.set(key, text);
      const kept = readKept(storage);
      expect(kept.ok ? '' : kept.reason).toContain('starts afresh');
    }
  });

  it('says so in words when the browser refuses to keep anything', () => {
    const refusing: TabStorage = { ...memory(), setItem: () => { throw new Error('quota exceeded'); } };
    expect(keep(refusing, state)).toContain('Download the document');
  });
});
