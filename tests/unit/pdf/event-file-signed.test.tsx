import { beforeAll, describe, expect, it } from 'vitest';
import { eventPaper } from '@/lib/papers/event-paper';
import { PaperOfBlocks } from '@/lib/pdf/documents/paper-of-blocks';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { checkFile } from '@/lib/pdf/verify/check-file';
import { type SampleSchool, sampleSchool } from '@/tests/support/pdf/school';
import { signAs, withFields } from '@/tests/support/pdf/signed-paper';
import { asFile, runTool, textOf } from '@/tests/support/pdf/tools';
import { eventFacts } from '../../support/event-facts';

const facts = eventFacts();
let school: SampleSchool;
let signed: Uint8Array = new Uint8Array();

/** Its first page has a link, which the places for signatures must leave as it is. */
beforeAll(async () => {
  school = await sampleSchool(facts.school.name);
  const fields = await withFields(await renderPaper(<PaperOfBlocks paper={eventPaper(facts)} />));
  const prepared = await signAs(fields, 'Preparer', facts.preparer.name, await school.signer(facts.preparer.name));
  signed = await signAs(prepared, 'Officer', facts.officer.name, await school.signer(facts.officer.name));
}, 120_000);

describe('a venue’s file signed by both', () => {
  it('holds for pdfsig, each signature in its own place', () => {
    const [first = '', second = ''] = runTool('pdfsig', [asFile(signed)]).text.split(/Signature #\d:/).slice(1);
    for (const [said, name] of [[first, facts.preparer.name], [second, facts.officer.name]] as const) {
      expect(said).toContain('Signature Validation: Signature is Valid.');
      expect(said).toContain(`Signer Certificate Common Name: ${name}`);
    }
    expect(second).toContain('- Total document signed');
  });

  it('is sound for qpdf, with its link still there', () => {
    const { code, text } = runTool('qpdf', ['--check', asFile(signed)]);
    expect(text).not.toContain('WARNING');
    expect(code).toBe(0);
    expect(runTool('qpdf', ['--qdf', '--object-streams=disable', asFile(signed), '-']).text).toContain(`/URI (${facts.readAt.event})`);
  });

  it('is unchanged for our own check', () => { expect(checkFile(signed, { authorities: [school.authority.certificate] }).state).toBe('unchanged'); });

  it('shows both signatures on its first page', () => {
    const first = textOf(signed, '-f', '1', '-l', '1');
    for (const { name } of [facts.preparer, facts.officer]) expect(first.split(name).length - 1, name).toBeGreaterThan(1);
  });
});
