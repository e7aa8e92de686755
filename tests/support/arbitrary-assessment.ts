import fc from 'fast-check';
import type { Content, InputDefinition } from '@/lib/content/model';
import type { AssessmentDocument, OwnMatrix } from '@/lib/core/document';
import { FORMAT } from '@/lib/interchange/assessment-schema';
import { arbitraryDocumentOf } from './arbitrary-document';

const STATES = ['in place', 'partly', 'absent', 'not sure', 'not applicable'] as const;
const OWN: OwnMatrix = { title: 'Ours', from: [0, 0.1], words: ['seldom', 'often'], cells: [['low', 'low', 'moderate', 'high', 'high'], ['low', 'moderate', 'moderate', 'high', 'extreme']] };

/** A few entries by id, each with a value of its own. */
function someOf<Value>(ids: readonly string[], value: fc.Arbitrary<Value>): fc.Arbitrary<Record<string, Value>> {
  return fc.tuple(fc.subarray([...ids], { maxLength: 6 }), fc.infiniteStream(value)).map(([some, values]) => Object.fromEntries(some.map((id) => [id, values.next().value])));
}

/** A value an input may be written over with. */
function inputValue({ min, max, unit }: InputDefinition): fc.Arbitrary<number> {
  if (unit === '0 or 1') return fc.constantFrom(0, 1);
  const [least, most] = [min ?? 0, max ?? 1];
  return fc.oneof(fc.constantFrom(least, most), fc.double({ min: least, max: most, noNaN: true }));
}

/** A document of an edition with every part that is scored. Some are faulty: whoever asks reads them first. */
export function arbitraryAssessment(content: Content): fc.Arbitrary<Readonly<Record<string, unknown>>> {
  const numbers = content.inputs.filter(({ min }) => min !== null);
  const inputs = fc.subarray(numbers, { maxLength: 5 }).chain((some) => fc.tuple(...some.map((input) => inputValue(input).map((value) => [input.id, value] as const)))).map(Object.fromEntries);
  const parts: Record<string, fc.Arbitrary<unknown>> = {
    exposures: someOf(content.exposures.map(({ id }) => id), fc.oneof(fc.constantFrom(0, 1e9), fc.double({ min: 0, max: 1e6, noNaN: true }))),
    inputs,
    states: someOf(content.controls.map(({ id }) => id), fc.constantFrom(...STATES)),
    record: someOf(content.scenarios.map(({ id }) => id), fc.record({ events: fc.nat(50), exposure: fc.double({ min: 1e-3, max: 1e6, noNaN: true }) })),
    planned: fc.subarray(content.controls.map(({ id }) => id), { maxLength: 8 }),
    effortBudget: fc.constantFrom(0, 8, 30),
    matrix: fc.constantFrom<AssessmentDocument['matrix']>('five-by-five', 'mil-std-882e', 'three-by-three', OWN),
  };
  return fc.tuple(arbitraryDocumentOf(content), fc.record(parts, { requiredKeys: [] })).map(([document, more]) => ({ format: FORMAT, ...document, ...more }));
}
