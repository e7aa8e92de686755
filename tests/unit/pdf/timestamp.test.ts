import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { requestTimestamp, type TimestampClient } from '@/lib/pdf/cms/timestamp';
import { checkFile } from '@/lib/pdf/verify/check-file';
import { signAs } from '@/tests/support/pdf/signed-paper';
import { signedSample, type SignedSample } from '@/tests/support/pdf/signed-sample';
import { signatureParts } from '@/tests/support/pdf/signature-parts';
import { asFile, runTool } from '@/tests/support/pdf/tools';
import { temporaryFolder } from '@/tests/support/temporary-folder';

/** A service for time stamps out of openssl (RFC 3161), in a folder of its own. */
function localService(): TimestampClient {
  const folder = temporaryFolder();
  const openssl = (...args: string[]) => { expect(runTool('openssl', args, folder)).toMatchObject({ code: 0 }); };
  writeFileSync(path.join(folder, 'tsa.cnf'), ['[tsa]', 'default_tsa = t', '[t]', 'serial = serial', 'signer_cert = tsa.pem', 'signer_key = tsa.key', 'signer_digest = sha256', 'default_policy = 1.2.3.4', 'digests = sha256', 'ess_cert_id_chain = no', ''].join('\n'));
  writeFileSync(path.join(folder, 'serial'), '01\n');
  openssl('req', '-x509', '-newkey', 'rsa:2048', '-nodes', '-keyout', 'tsa.key', '-out', 'tsa.pem', '-days', '30', '-subj', '/CN=Time', '-addext', 'extendedKeyUsage=critical,timeStamping', '-addext', 'keyUsage=critical,digitalSignature');
  return (request) => {
    writeFileSync(path.join(folder, 'request'), request);
    openssl('ts', '-reply', '-config', 'tsa.cnf', '-queryfile', 'request', '-out', 'reply');
    return Promise.resolve(new Uint8Array(readFileSync(path.join(folder, 'reply'))));
  };
}

let sample: SignedSample;
beforeAll(async () => { sample = await signedSample(); }, 60_000);
const check = (pdf: Uint8Array) => checkFile(pdf, { authorities: [sample.school.authority.certificate] });

describe('a signature with a time stamp', () => {
  it('holds for other programs and says when it was there, by whose word', async () => {
    const signer = await sample.school.signer('A');
    const pdf = await signAs(sample.fields, 'Preparer', 'A', { ...signer, timestamp: localService() });
    const result = check(pdf);
    expect(result.state).toBe('unchanged');
    const stampedAt = 'signatures' in result ? result.signatures[0]?.stampedAt : undefined;
    expect(Math.abs((stampedAt?.getTime() ?? 0) - Date.now())).toBeLessThan(120_000);
    expect(runTool('pdfsig', [asFile(pdf)]).text).toContain('Signature is Valid');
  });

  it('is changed when the token of another signature stands beside it', async () => {
    const signer = await sample.school.signer('A');
    const client = localService();
    const stolen = await requestTimestamp(Uint8Array.of(1, 2, 3), client, new Uint8Array(8));
    const pdf = await signAs(sample.fields, 'Preparer', 'A', { ...signer, timestamp: client });
    const { container, gap } = signatureParts(pdf)[0]!;
    const own = Buffer.from(container);
    const at = own.indexOf(Buffer.from('060b2a864886f70d010910020e', 'hex')) + 13 + 4;
    expect(own.subarray(at, at + 2).toString('hex')).toBe('3082');
    const size = own.readUInt16BE(at + 2) + 4;
    expect(size).toBe(stolen.length);
    const swapped = Buffer.from(pdf);
    swapped.write(Buffer.from(stolen).toString('hex'), gap.start + 1 + at * 2, 'latin1');
    const result = check(new Uint8Array(swapped));
    expect(result.state).toBe('changed');
    expect('signatures' in result && result.signatures[0]?.findings).toMatchObject([{ kind: 'timestamp' }]);
  });
});

describe('a service that answers wrongly', () => {
  const nonce = new Uint8Array(8).fill(3);
  it.each<[string, () => TimestampClient, RegExp]>([
    ['with nothing', () => () => Promise.resolve(new Uint8Array()), /refused/],
    ['with a refusal', () => () => Promise.resolve(Uint8Array.of(0x30, 0x05, 0x30, 0x03, 0x02, 0x01, 0x02)), /refused/],
    ['with the answer to another question', () => { const client = localService(); let first: Uint8Array | undefined; return async (request) => { first ??= await client(request); return first; }; }, /something else/],
    ['with noise', () => () => Promise.resolve(new Uint8Array(200).fill(0x30)), /refused|something else/],
  ])('keeps the paper from being signed: %s', async (what, service, message) => {
    const client = service();
    if (what.includes('another')) await requestTimestamp(Uint8Array.of(1), client, nonce);
    await expect(requestTimestamp(Uint8Array.of(2), client, nonce)).rejects.toThrow(message);
  });

  it('keeps the paper from being signed when it cannot be reached', async () => {
    const signer = await sample.school.signer('A');
    await expect(signAs(sample.fields, 'Preparer', 'A', { ...signer, timestamp: () => Promise.reject(new Error('no connection')) })).rejects.toThrow('no connection');
  });
});
