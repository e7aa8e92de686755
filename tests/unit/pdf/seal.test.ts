import { describe, expect, it } from 'vitest';
import { openKey, sealKey, type Opener } from '@/lib/pdf/certificates/seal';

const key = new TextEncoder().encode('a private key, in PKCS #8');
const school: Opener = { secret: new Uint8Array(32).fill(7), owner: 'school 1' };
const person: Opener = { ...school, owner: 'person 17', password: 'correct horse é' };

describe('a sealed key of the school', () => {
  it('opens with what it was sealed with', async () => { expect(await openKey(await sealKey(key, school), school)).toEqual({ ok: true, key }); });

  it('never looks the same twice', async () => { expect(await sealKey(key, school)).not.toBe(await sealKey(key, school)); });

  it.each<[string, Opener]>([
    ['another secret', { ...school, secret: new Uint8Array(32).fill(8) }],
    ['another owner', { ...school, owner: 'school 2' }],
    ['a password where there was none', { ...school, password: 'x' }],
  ])('stays shut for %s', async (_, opener) => { expect(await openKey(await sealKey(key, school), opener)).toEqual({ ok: false, reason: 'wrong-or-altered' }); });

  it('stays shut when any character of it was changed', async () => {
    const sealed = await sealKey(key, school);
    for (let index = 0; index < sealed.length; index += 1) {
      const other = sealed[index] === 'A' ? 'B' : 'A';
      const altered = sealed.slice(0, index) + other + sealed.slice(index + 1);
      expect(await openKey(altered, school), altered).toMatchObject({ ok: false });
    }
  });

  it.each(['', 'sb2-secret.a.b.c', 'sb1-secret', 'sb1-secret...', 'sb1-secret.AAAA.AAAA.AAAA', 'sb1-secret.AAAAAAAAAAAAAAAAAAAAAA.AAAAAAAAAAAAAAAA.AAAA', '{"v":1}'])('is not guessed from %s', async (text) => { expect(await openKey(text, school)).toEqual({ ok: false, reason: 'unknown-form' }); });

  it('is not made under a short secret', async () => { await expect(sealKey(key, { ...school, secret: new Uint8Array(16) })).rejects.toThrow('fewer than 32 bytes'); });
});

describe('a sealed key of a person', () => {
  it('opens with the password and the secret, however the letters were typed', async () => {
    const sealed = await sealKey(key, person);
    expect(await openKey(sealed, { ...person, password: 'correct horse e\u0301' })).toEqual({ ok: true, key });
    expect(await openKey(sealed, { ...person, password: 'correct horse e' })).toEqual({ ok: false, reason: 'wrong-or-altered' });
    expect(await openKey(sealed, { ...person, secret: new Uint8Array(32).fill(9) })).toEqual({ ok: false, reason: 'wrong-or-altered' });
    expect(await openKey(sealed, { ...person, password: undefined })).toEqual({ ok: false, reason: 'wrong-or-altered' });
    expect(await openKey(sealed.replace('sb1-password', 'sb1-secret'), { ...person, password: undefined })).toEqual({ ok: false, reason: 'wrong-or-altered' });
  });
});
