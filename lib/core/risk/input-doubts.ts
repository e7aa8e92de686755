import type { InputDefinition, InputValue } from '@/lib/content/model';
import type { AssessmentDocument } from '@/lib/core/document';
import type { DoubtResult } from '@/lib/core/result';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { Venue } from '@/lib/core/answers/venue';
import { evaluateClosed } from './closed-form';
import { riskSetup } from './risk-setup';

/** A figure nobody gave is moved to half and to twice what was taken for it; our judgement of "could be". */
const FACTOR = 2;

/**
 * Bars for inputs that were assumed because nobody knows them: half and twice the figure taken, or each
 * word that could stand there. These a person can go and measure.
 */
export function inputDoubts(venue: Venue, document: AssessmentDocument): readonly DoubtResult[] {
  const definitions = new Map(venue.content.inputs.map((input) => [input.id, input]));
  return venue.assumedInputs.flatMap((assumed) => {
    const definition = definitions.get(assumed.input);
    const values = definition === undefined ? [] : alternatives(venue, definition, assumed.value);
    if (values.length < 2) return [];
    const harms = values.map((value) => totalWith(venue, document, assumed.input, value));
    return [{
      kind: 'input' as const,
      id: assumed.input,
      title: assumed.title,
      between: values.map((value) => `${value} ${unitWords(assumed.unit)}`.trim()).join(', or '),
      harmLow: Math.min(...harms),
      harmHigh: Math.max(...harms),
      canBeChecked: true,
    }];
  });
}

function alternatives(venue: Venue, definition: InputDefinition, taken: InputValue): readonly InputValue[] {
  if (typeof taken === 'string') return wordsFor(venue, definition.id);
  if (definition.unit === '0 or 1') return [0, 1];
  const low = Math.max(definition.min ?? taken / FACTOR, taken / FACTOR);
  const high = Math.min(definition.max ?? taken * FACTOR, taken * FACTOR);
  return low < high ? [low, high] : [];
}

/** Words that some option of the question set can give this input. */
function wordsFor(venue: Venue, input: string): readonly string[] {
  const words = venue.content.questions.flatMap((question) =>
    question.kind === 'choice' || question.kind === 'multi' ? question.options.map((option) => option.sets.inputs[input]) : []);
  return [...new Set(words.filter((word) => typeof word === 'string'))];
}

function totalWith(venue: Venue, document: AssessmentDocument, input: string, value: InputValue): number {
  const moved = resolveVenue(venue.content, { ...document, inputs: { ...document.inputs, [input]: value } });
  return evaluateClosed(riskSetup(moved, document), moved).totalHarm;
}

const unitWords = (unit: string): string => (unit === 'word' || unit === '0 or 1' || unit === 'light, ordinary or heavy' ? '' : unit);
