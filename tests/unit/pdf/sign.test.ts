import { beforeAll, describe, expect, it } from 'vitest';
import { certificatePem } from '@/lib/pdf/certificates/pem';
import { signatureBoxSize } from '@/lib/pdf/render/signature-geometry';
import { addSignatureFields } from '@/lib/pdf/sign/add-signature-fields';
import { signField } from '@/lib/pdf/sign/sign-field';
import { renderSample } from '@/tests/support/pdf/sample-paper';
import { sampleSchool } from '@/tests/support/pdf/school';
import { emptyPlace, signAs, SIGNED_AT, withFields } from '@/tests/support/pdf/signed-paper';
import { signedSample, type SignedSample } from '@/tests/support/pdf/signed-sample';
import { signatureParts } from '@/tests/support/pdf/signature-parts';
import { asFile, runTool, textOf } from '@/tests/support/pdf/tools';

const SIZE = signatureBoxSize('A4');
let sample: SignedSample;
beforeAll(async () => { sample = await signedSample(); }, 60_000);

const pdfsig = (pdf: Uint8Array) => runTool('pdfsig', [asFile(pdf)]).text.split(/Signature #\d:/).slice(1);

describe('a paper signed by two, one after the other', () => {
  it('holds for poppler, which sees that the last signature covers the whole file', () => {
    const [first = '', second = ''] = pdfsig(sample.signed);
    for (const text of [first, second]) {
      expect(text).toContain('Signature Validation: Signature is Valid.');
      expect(text).toContain('Signature Type: ETSI.CAdES.detached');
      expect(text).toContain('Signing Hash Algorithm: SHA-256');
    }
    expect(first).toContain('Signature Field Name: Preparer');
    expect(first).toContain('Signer Certificate Common Name: Katarzyna Müller');
    expect(first).toContain('Not total document signed');
    expect(second).toContain('Signature Field Name: Officer');
    expect(second).toContain('Signer Certificate Common Name: Αλέξανδρος 王小明');
    expect(second).toContain('- Total document signed');
  });

  it('holds for openssl as CAdES, down to the school’s certificate', () => {
    const authority = asFile(certificatePem(sample.school.authority.certificate), 'ca.pem');
    const parts = signatureParts(sample.signed);
    expect(parts).toHaveLength(2);
    for (const { covered, container } of parts) {
      const args = ['cms', '-verify', '-cades', '-binary', '-inform', 'DER', '-in', asFile(container, 's.der'), '-content', asFile(covered, 's.dat'), '-CAfile', authority, '-attime', String(SIGNED_AT.Officer.getTime() / 1000), '-out', asFile('', 'out')];
      const { code, text } = runTool('openssl', args);
      expect(text).toContain('CAdES Verification successful');
      expect(code).toBe(0);
    }
  });

  it('is sound for qpdf at each step', () => {
    for (const pdf of [sample.fields, sample.prepared, sample.signed]) {
      const { code, text } = runTool('qpdf', ['--check', asFile(pdf)]);
      expect(text).toContain('No syntax or stream encoding errors found');
      expect(text).not.toContain('WARNING');
      expect(code).toBe(0);
    }
  });

  it('signs content type, digest and certificate, and no time', () => {
    for (const { container } of signatureParts(sample.signed)) {
      const { text } = runTool('openssl', ['cms', '-cmsout', '-print', '-inform', 'DER', '-in', asFile(container, 's.der')]);
      const signed = text.slice(text.indexOf('signedAttrs:'), text.indexOf('signatureAlgorithm:', text.indexOf('signedAttrs:')));
      expect(Array.from(signed.matchAll(/object: (.*) \(/g), ([, name]) => name)).toEqual(['contentType', 'messageDigest', 'id-smime-aa-signingCertificateV2']);
      expect(text).toContain('algorithm: ecdsa-with-SHA256');
    }
  });

  it('keeps every byte that was signed before', () => {
    expect(Buffer.from(sample.signed.subarray(0, sample.prepared.length)).equals(sample.prepared)).toBe(true);
    expect(Buffer.from(sample.prepared.subarray(0, sample.fields.length)).equals(sample.fields)).toBe(true);
    expect(Buffer.from(sample.fields.subarray(0, sample.unsigned.length)).equals(sample.unsigned)).toBe(true);
  });

  it('shows who signed, as which, why and by whose clock', () => {
    const text = textOf(sample.signed, '-layout');
    expect(text).not.toContain('not signed');
    expect(textOf(sample.prepared)).toContain('not signed');
    for (const words of ['Katarzyna Müller', 'Αλέξανδρος 王小明', 'Safety officer, Tern Lane School', 'Prepared and seen on site', '2026-11-26, 08:41 UTC by the clock of the computer', 'Certificate 9c41 07be 5d20 e83a']) expect(text).toContain(words);
  });

  it('says that only signing is allowed after the first signature', () => {
    const text = runTool('qpdf', ['--json', '--json-key=qpdf', asFile(sample.signed)]).text;
    expect(text).toContain('"/TransformMethod": "/DocMDP"');
    expect(text.match(/"\/P": 2\b/g)).toHaveLength(1);
    expect(text.match(/"\/SigFlags": 3/g)).not.toBeNull();
  });
});

describe('signing', () => {
  it('gives the same bytes for the same input, the signature itself apart', async () => {
    const signer = await sample.school.signer('A');
    const [one, two] = [await signAs(sample.fields, 'Preparer', 'A', signer), await signAs(sample.fields, 'Preparer', 'A', signer)];
    const without = (pdf: Uint8Array) => Buffer.concat(signatureParts(pdf).map(({ covered }) => covered));
    expect(without(one).equals(without(two))).toBe(true);
    expect(Buffer.from(one).equals(two)).toBe(false);
  });

  it('refuses a field that is signed, one that is not there, and a file that was cut or added to', async () => {
    const signer = await sample.school.signer('A');
    await expect(signAs(sample.prepared, 'Preparer', 'A', signer)).rejects.toThrow('Preparer has signed');
    await expect(signAs(sample.unsigned, 'Officer', 'A', signer)).rejects.toThrow('there is no field Officer');
    await expect(signAs(Buffer.concat([sample.prepared, Buffer.from('x')]), 'Officer', 'A', signer)).rejects.toThrow('after the end');
    await expect(signAs(sample.fields.subarray(0, -20), 'Officer', 'A', signer)).rejects.toThrow();
  });

  it('refuses a picture that would be stretched', async () => {
    const request = { role: 'Officer' as const, name: 'A', reason: 'r', at: SIGNED_AT.Officer };
    await expect(signField(sample.fields, { ...request, appearance: sample.unsigned }, await sample.school.signer('A'))).rejects.toThrow('not as large as its place');
  });

  it('takes a name of any length and script, and shows all of it', async () => {
    for (const name of ['Hansjörg-Maximilian von Hohenstein-Łukasiewicz der Ältere', 'Ольга Владимировна Шевченко-Воскресенская', '欧陽菲菲・アレクサンドラ・山田太郎', 'محمد علي الحسيني', 'Nguyễn Thị Hồng Đặng']) {
      const pdf = await signAs(sample.fields, 'Preparer', name, await sample.school.signer(name));
      const text = textOf(pdf).replaceAll(/\s+/g, ' ');
      expect(text).toContain('Certificate 9c41 07be 5d20 e83a');
      if (!name.startsWith('م')) expect(text).toContain(name);
      expect(pdfsig(pdf)[0]).toContain(`Signer Certificate Common Name: ${name}`);
    }
  });

  it('can be the officer’s alone, as on the paper of an incident', async () => {
    const school = await sampleSchool('Tern Lane School');
    const pdf = addSignatureFields(await renderSample({ paper: 'LETTER' }), [{ role: 'Officer', page: 0, rectangle: [80, 80, 80 + SIZE.width, 80 + SIZE.height], appearance: await emptyPlace() }]);
    expect(pdfsig(await signAs(pdf, 'Officer', 'A', await school.signer('A')))[0]).toContain('Signature is Valid');
  });

  it('puts a field on a page that is there, once for each role, and only into a file without a form', async () => {
    const place = { page: 0, rectangle: [0, 0, SIZE.width, SIZE.height] as const, appearance: await emptyPlace() };
    expect(() => addSignatureFields(sample.unsigned, [{ ...place, role: 'Officer', page: 7 }])).toThrow('no page 7');
    expect(() => addSignatureFields(sample.unsigned, [{ ...place, role: 'Officer' }, { ...place, role: 'Officer' }])).toThrow('two of one role');
    expect(() => addSignatureFields(sample.unsigned, [])).toThrow('no fields');
    expect(() => addSignatureFields(sample.unsigned, [{ ...place, role: 'Officer', rectangle: [0, 0, 10, 10] }])).toThrow('not as large as its place');
    await expect(withFields(sample.fields)).rejects.toThrow('a form already');
  });
});
