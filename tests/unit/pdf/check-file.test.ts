import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkFile } from '@/lib/pdf/verify/check-file';
import type { FileCheck } from '@/lib/pdf/verify/file-check';
import { verdictOf } from '@/lib/pdf/verify/verdict';
import { verdictInWords } from '@/lib/pdf/verify/words';
import { signatureBoxSize } from '@/lib/pdf/render/signature-geometry';
import { appendRevision } from '@/lib/pdf/sign/append-revision';
import { openForSigning } from '@/lib/pdf/sign/open-for-signing';
import { openDocument } from '@/lib/pdf/structure/document';
import { signatureFields } from '@/lib/pdf/structure/fields';
import { catalogOf } from '@/lib/pdf/structure/get';
import { arrayOf, dictOf, nameOf, refTo, withEntries, type PdfValue } from '@/lib/pdf/structure/objects';
import { pagesOf } from '@/lib/pdf/structure/pages';
import { readFile } from '@/lib/pdf/structure/read-file';
import { plainString } from '@/lib/pdf/structure/text';
import { SCHOOL_OPENED, sampleSchool } from '@/tests/support/pdf/school';
import { signAs, SIGNED_AT } from '@/tests/support/pdf/signed-paper';
import { signedSample, type SignedSample } from '@/tests/support/pdf/signed-sample';
import { signatureParts } from '@/tests/support/pdf/signature-parts';

const SIZE = signatureBoxSize('A4');
let sample: SignedSample;
let check: (pdf: Uint8Array) => FileCheck;
beforeAll(async () => {
  sample = await signedSample();
  check = (pdf) => checkFile(pdf, { authorities: [sample.school.authority.certificate] });
}, 60_000);

const kinds = (result: FileCheck) => ('signatures' in result ? [...result.signatures.flatMap(({ findings }) => findings), ...result.findings].map(({ kind }) => kind) : []);
const buffer = (bytes: Uint8Array) => Buffer.from(bytes);

describe('a file as it was signed', () => {
  it('is unchanged, by whom, when, why, and how far each signature reaches', () => {
    const result = check(sample.signed);
    expect(result).toMatchObject({ state: 'unchanged', unsignedRoles: [], findings: [] });
    expect('signatures' in result && result.signatures).toMatchObject([
      { role: 'Preparer', holder: 'Katarzyna Müller', issuedHere: true, reason: 'Prepared and seen on site', claimedAt: SIGNED_AT.Preparer, stampedAt: undefined, coversTo: sample.prepared.length, revision: 3, findings: [] },
      { role: 'Officer', holder: 'Αλέξανδρος 王小明', issuedHere: true, claimedAt: SIGNED_AT.Officer, coversTo: sample.signed.length, revision: 4, findings: [] },
    ]);
  });

  it('is known by the fingerprint it had at each signature', () => {
    const before = check(sample.prepared);
    const after = check(sample.signed);
    expect('signatures' in after && after.signatures.map(({ fingerprint }) => fingerprint)).toEqual([before.fingerprint, after.fingerprint]);
  });

  it('waits for the officer while only the first has signed', () => { expect(check(sample.prepared)).toMatchObject({ state: 'unchanged', unsignedRoles: ['Officer'] }); });

  it.each(['unsigned', 'fields'] as const)('is not signed before the first: %s', (step) => { expect(check(sample[step])).toMatchObject({ state: 'unsigned' }); });

  it('holds with the old certificates of a school beside the new one', async () => {
    const newer = await sampleSchool('Tern Lane School');
    expect(checkFile(sample.signed, { authorities: [newer.authority.certificate, sample.school.authority.certificate] }).state).toBe('unchanged');
  });
});

describe('a changed byte', () => {
  const isFound = (position: number, value: number) => {
    const altered = Uint8Array.from(sample.signed);
    altered[position] = value;
    const result = check(altered);
    expect(result.state, `byte ${position} to ${value}`).not.toBe('unchanged');
  };
  const other = (position: number, seed: number) => ((sample.signed[position] ?? 0) + 1 + (seed % 255)) & 0xff;

  it('is found wherever it is', () => {
    fc.assert(fc.property(fc.nat(), fc.nat(), (at, seed) => { const position = at % sample.signed.length; isFound(position, other(position, seed)); }), { numRuns: 300 });
  });

  it('is found in the last signature itself, which no other covers', () => {
    const { start, end } = signatureParts(sample.signed)[1]!.gap;
    fc.assert(fc.property(fc.nat(), fc.nat(), (at, seed) => { const position = start + (at % (end - start)); isFound(position, other(position, seed)); }), { numRuns: 200 });
  });

  it('is found in the digits of the last signature, also as another valid digit or a capital letter', () => {
    const { start } = signatureParts(sample.signed)[1]!.gap;
    const digits = 2 * (signatureParts(sample.signed)[1]!.container.findLastIndex((byte) => byte !== 0) + 1);
    for (let position = start + 1; position <= start + digits + 4; position += 23) {
      const digit = String.fromCharCode(sample.signed[position] ?? 0);
      isFound(position, (digit === '7' ? '8' : '7').charCodeAt(0));
      if (digit !== digit.toUpperCase()) isFound(position, digit.toUpperCase().charCodeAt(0));
    }
  });

  it('says which bytes it is about', () => {
    const altered = Uint8Array.from(sample.signed);
    const inText = buffer(altered).indexOf('stream', 200) + 20;
    altered[inText] = (altered[inText] ?? 0) ^ 1;
    const result = check(altered);
    expect(result).toMatchObject({ state: 'changed' });
    expect('signatures' in result && result.signatures.map(({ findings }) => findings)).toEqual([[{ kind: 'digest', start: 0, end: sample.prepared.length }], [{ kind: 'digest', start: 0, end: sample.signed.length }]]);
  });

  it('after the first signature leaves that one standing', () => {
    const altered = Uint8Array.from(sample.signed);
    altered[sample.signed.length - 3] = 'x'.charCodeAt(0);
    expect(check(altered).state).not.toBe('unchanged');
    const inSecond = buffer(altered).indexOf('/M (D:', sample.prepared.length) + 8;
    const other = Uint8Array.from(sample.signed);
    other[inSecond] = '7'.charCodeAt(0);
    const result = check(other);
    expect('signatures' in result && result.signatures.map(({ findings }) => findings.length)).toEqual([0, 1]);
  });
});

describe('a file that was cut or added to', () => {
  it('is never taken for whole, wherever it is cut', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: sample.signed.length - 1 }), (length) => {
      const result = check(sample.signed.subarray(0, length));
      if (length === sample.prepared.length) expect(result).toMatchObject({ state: 'unchanged', unsignedRoles: ['Officer'] });
      else expect(result.state).not.toBe('unchanged');
    }), { numRuns: 200 });
  });

  it('says that its end is missing where it was cut in the middle of the last signature’s revision', () => {
    for (const left of [40, 300, 3000]) {
      const cut = check(sample.signed.subarray(0, sample.signed.length - left));
      expect(cut).toMatchObject({ state: 'changed', findings: [{ kind: 'cut-off' }] });
      expect(verdictInWords(verdictOf(cut, { state: 'in-force' }), String)).toMatchObject({ tone: 'stop', heading: 'Cut off' });
    }
    expect(check(Buffer.concat([sample.signed, Buffer.from('\n% more\n')]))).toMatchObject({ state: 'changed', findings: [{ kind: 'after-last-signature' }] });
  });

  it('cut back to one signature it is not finished', () => { expect(check(sample.signed.subarray(0, sample.prepared.length))).toMatchObject({ unsignedRoles: ['Officer'] }); });

  it.each(['\n', ' ', '%%EOF\n', 'startxref\n9\n%%EOF\n', '<html></html>', '\0'.repeat(5000)])('with bytes after its end it is changed: %j', (extra) => {
    const altered = Buffer.concat([sample.signed, Buffer.from(extra, 'latin1')]);
    const result = check(altered);
    expect(['changed', 'unreadable']).toContain(result.state);
    if (result.state === 'changed') expect(result.findings).toEqual([{ kind: 'after-last-signature', start: sample.signed.length, end: altered.length }]);
  });
});

/** Adds a revision that no signature covers, or signs it as the officer. */
const added = (pdf: Uint8Array, objects: (document: ReturnType<typeof openForSigning>) => readonly [number, PdfValue][]) => {
  const document = openForSigning(pdf);
  return appendRevision(document, objects(document).map(([number, body]) => ({ ref: refTo(number), body }))).bytes;
};

describe('what was added after a signature', () => {
  const pageWithout = (pdf: Uint8Array): Uint8Array => added(pdf, (document) => {
    const [page] = pagesOf(document);
    return [[page!.ref.number, withEntries(page!.dict, { Contents: refTo(9000) })], [9000, { kind: 'stream', dict: dictOf({ Length: 0 }), data: new Uint8Array() }]];
  });

  it('is found after the last one, even where it changes nothing that is seen', () => {
    const note = added(sample.signed, () => [[9000, plainString('a note')]]);
    expect(check(note)).toMatchObject({ state: 'changed', findings: [{ kind: 'not-permitted' }, { kind: 'after-last-signature', start: sample.signed.length }] });
    expect(check(pageWithout(sample.signed))).toMatchObject({ state: 'changed' });
  });

  // The three kinds of attack that hide, replace or add content between two signatures; each is then signed by the officer in good faith.
  it.each<[string, (pdf: Uint8Array) => Uint8Array]>([
    ['a page that shows something else', pageWithout],
    ['another catalog', (pdf) => added(pdf, (document) => [[catalogOf(document).ref.number, withEntries(catalogOf(document).dict, { Pages: refTo(9001) })], [9001, dictOf({ Type: nameOf('Pages'), Kids: arrayOf([]), Count: 0 })]])],
    ['an object that nothing leads to', (pdf) => added(pdf, () => [[9000, plainString('later')]])],
    ['another look of the first signature', (pdf) => added(pdf, (document) => {
      const [field] = signatureFields(document);
      return [[field!.ref.number, withEntries(field!.widget, { AP: dictOf({ N: refTo(1) }) })]];
    })],
    ['another place for the second signature', (pdf) => added(pdf, (document) => {
      const field = signatureFields(document)[1];
      return [[field!.ref.number, withEntries(field!.widget, { Rect: arrayOf([0, 0, SIZE.width, SIZE.height]) })]];
    })],
  ])('is found between two of them: %s', async (_, change) => {
    const altered = change(sample.prepared);
    expect(check(altered).state).toBe('changed');
    const file = readFile(altered);
    const opened = openDocument(file);
    const signable = signatureFields(opened).some(({ name, signature }) => name === 'Officer' && signature === undefined);
    expect(signable).toBe(true);
    if (pagesOf(opened).length === 0) return;
    const result = check(await signAs(altered, 'Officer', 'B', await sample.school.signer('B')));
    expect(result.state).toBe('changed');
    expect(kinds(result)).toContain('not-permitted');
  });

  it('is found where a signature is taken out again', () => {
    const undone = added(sample.signed, (document) => {
      const field = signatureFields(document)[1]!;
      return [[field.ref.number, { ...field.widget, entries: new Map([...field.widget.entries].filter(([name]) => name !== 'V')) }]];
    });
    expect(check(undone)).toMatchObject({ state: 'changed', unsignedRoles: ['Officer'] });
  });
});

describe('a signature by somebody else', () => {
  it('is foreign, however the certificate calls itself', async () => {
    const other = await sampleSchool('Tern Lane School');
    const prepared = await signAs(sample.fields, 'Preparer', 'Katarzyna Müller', await other.signer('Katarzyna Müller'));
    const signed = await signAs(prepared, 'Officer', 'B', await other.signer('B'));
    expect(check(signed)).toMatchObject({ state: 'foreign', signatures: [{ issuedHere: false, holder: 'Katarzyna Müller', findings: [] }, { issuedHere: false }] });
  });

  it('is foreign beside a good one', async () => {
    const other = await sampleSchool('Tern Lane School');
    expect(check(await signAs(sample.prepared, 'Officer', 'B', await other.signer('B')))).toMatchObject({ state: 'foreign', signatures: [{ issuedHere: true }, { issuedHere: false }] });
  });

  it('with a certificate that is the school’s own is no signature of a person', async () => {
    const { authority } = sample.school;
    const pdf = await signAs(sample.fields, 'Preparer', 'A', { certificate: authority.certificate, issuer: authority.certificate, key: authority.key });
    expect(check(pdf).state).toBe('foreign');
  });

  it('with a good certificate and another key is broken', async () => {
    const [mine, theirs] = [await sample.school.signer('A'), await sample.school.signer('B')];
    const result = check(await signAs(sample.fields, 'Preparer', 'A', { ...mine, key: theirs.key }));
    expect(result.state).toBe('changed');
    expect(kinds(result)).toEqual(['digest']);
  });
});

describe('the time of a signature', () => {
  it.each(['2026-11-20T06:59:59Z', '2028-11-20T08:00:01Z'])('must lie in the life of its certificate: %s', async (at) => {
    const result = check(await signAs(sample.fields, 'Preparer', 'A', await sample.school.signer('A'), new Date(at)));
    expect(result.state).toBe('changed');
    expect(kinds(result)).toEqual(['certificate-period']);
  });

  it('may be its first moment', async () => { expect(check(await signAs(sample.fields, 'Preparer', 'A', await sample.school.signer('A'), SCHOOL_OPENED)).state).toBe('unchanged'); });
});
