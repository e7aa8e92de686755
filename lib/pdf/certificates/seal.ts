import { createCipheriv, createDecipheriv, hkdfSync, randomBytes, scrypt } from 'node:crypto';

/**
 * What opens a sealed key. The school's own key opens with the secret of the installation; a person's key wants
 * that person's password as well, so that neither a copy of the folder nor an administrator can sign for anyone.
 */
export interface Opener {
  /** at least 32 bytes */
  readonly secret: Uint8Array;
  readonly password?: string;
  /** what the key belongs to, as "person 17": a sealed key put in another's place does not open */
  readonly owner: string;
}

export type Opened = { readonly ok: true; readonly key: Uint8Array } | { readonly ok: false; readonly reason: SealFault };
/** `wrong-or-altered`: wrong password, wrong secret, another owner's key or a changed text; they cannot be told apart */
export type SealFault = 'unknown-form' | 'wrong-or-altered';

const FORMS = ['sb1-secret', 'sb1-password'] as const;
type Form = (typeof FORMS)[number];

/** scrypt's work for a password: about 0.3 s and 128 MB each time (RFC 7914). Fixed by the form's name. */
const WORK = { N: 2 ** 17, r: 8, p: 1, maxmem: 192 * 1024 * 1024 } as const;

/**
 * Seals a private key for keeping: AES-256-GCM under a key from HKDF-SHA-256 (RFC 5869) over the installation's
 * secret, salted with random bytes or, where a password is given, with what scrypt makes of it. Form and owner are
 * bound in as additional data.
 * @returns one line of text: form, salt, initial vector, ciphertext and tag
 */
export async function sealKey(key: Uint8Array, opener: Opener): Promise<string> {
  const form: Form = opener.password === undefined ? 'sb1-secret' : 'sb1-password';
  const salt = randomBytes(16);
  const iv = randomBytes(12);
  const cipher = createCipheriv('aes-256-gcm', await sealingKey(opener, salt), iv).setAAD(boundData(form, opener));
  const sealed = Buffer.concat([cipher.update(key), cipher.final(), cipher.getAuthTag()]);
  return [form, ...[salt, iv, sealed].map((part) => part.toString('base64url'))].join('.');
}

/** Opens a sealed key. Anything changed, anywhere in the text, and it does not open. */
export async function openKey(sealed: string, opener: Opener): Promise<Opened> {
  const [name, ...parts] = sealed.split('.');
  const form = FORMS.find((known) => known === name);
  const [salt, iv, body] = parts.map((part) => Buffer.from(part, 'base64url'));
  const wellFormed = parts.length === 3 && parts.every((part, index) => part === [salt, iv, body][index]?.toString('base64url'));
  if (form === undefined || salt?.length !== 16 || iv?.length !== 12 || body === undefined || body.length <= 16 || !wellFormed) return { ok: false, reason: 'unknown-form' };
  if ((form === 'sb1-password') !== (opener.password !== undefined)) return { ok: false, reason: 'wrong-or-altered' };
  const decipher = createDecipheriv('aes-256-gcm', await sealingKey(opener, salt), iv, { authTagLength: 16 }).setAAD(boundData(form, opener)).setAuthTag(body.subarray(-16));
  const start = decipher.update(body.subarray(0, -16));
  try {
    return { ok: true, key: new Uint8Array(Buffer.concat([start, decipher.final()])) };
  } catch {
    // The tag does not fit: this is how the cipher says so.
    return { ok: false, reason: 'wrong-or-altered' };
  }
}

async function sealingKey({ secret, password }: Opener, salt: Uint8Array): Promise<Uint8Array> {
  if (secret.length < 32) throw new Error('the secret of the installation has fewer than 32 bytes');
  const from = password === undefined ? salt : await stretched(password, salt);
  return new Uint8Array(hkdfSync('sha256', secret, from, 'sandbucket: sealing of private keys', 32));
}

/** Typed letters have more than one form; one of them is agreed on. */
function stretched(password: string, salt: Uint8Array): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    scrypt(password.normalize('NFKC'), salt, 32, WORK, (error, key) => { if (error === null) resolve(key); else reject(error); });
  });
}

function boundData(form: Form, { owner }: Opener): Uint8Array {
  return new TextEncoder().encode(`${form}\n${owner}`);
}
