import { renderSample } from './sample-paper';
import { sampleSchool, type SampleSchool } from './school';
import { signAs, withFields } from './signed-paper';

export interface SignedSample {
  readonly school: SampleSchool;
  readonly unsigned: Uint8Array;
  readonly fields: Uint8Array;
  readonly prepared: Uint8Array;
  readonly signed: Uint8Array;
}

/** One paper at each step: set, with places for signatures, signed by the first, signed by both. */
export async function signedSample(): Promise<SignedSample> {
  const school = await sampleSchool('Tern Lane School');
  const unsigned = await renderSample({ lines: ['Four packs at most are charged at once.'] });
  const fields = await withFields(unsigned);
  const prepared = await signAs(fields, 'Preparer', 'Katarzyna Müller', await school.signer('Katarzyna Müller'));
  const signed = await signAs(prepared, 'Officer', 'Αλέξανδρος 王小明', await school.signer('Αλέξανδρος 王小明'));
  return { school, unsigned, fields, prepared, signed };
}
