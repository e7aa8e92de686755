import { readFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import type { DangerousSentence } from './dangerous-words';

const ReviewedSchema = z.strictObject({
  note: z.string(),
  /** by file; `safe`: why it sends nobody towards a pack; `superseded`: what is wrong with it, first edition only */
  files: z.record(z.string(), z.array(z.strictObject({ sentence: z.string().min(1), verdict: z.enum(['safe', 'superseded']), why: z.string().min(10) })).min(1)),
});
export type Reviewed = z.infer<typeof ReviewedSchema>;

const REVIEWED_LIST = 'tests/reference-data/reviewed-sentences.json';

/** The sentences that somebody read and judged. A file of another shape throws. */
export function readReviewed(root: string): Reviewed {
  return ReviewedSchema.parse(JSON.parse(readFileSync(path.join(root, REVIEWED_LIST), 'utf8')));
}

/** Sentences that nobody judged, with what to do about each. */
export function notReviewed(found: readonly DangerousSentence[], { files }: Reviewed): readonly string[] {
  return found
    .filter(({ file, sentence }) => !(files[file] ?? []).some((entry) => entry.sentence === sentence))
    .map(({ file, sentence, word }) => `${file} says "${word}" where it speaks of packs, fire, smoke or heat: ${JSON.stringify(sentence)}. `
      + 'Could somebody frightened read it as a reason to go towards a pack that burns or vents, or to lay hands on it? Then reword it. '
      + `If not, add it to ${REVIEWED_LIST} with the reason why not.`);
}

/** Judgements about sentences that no longer stand there: a changed sentence is judged anew, and the old line goes. */
export function outOfDate(found: readonly DangerousSentence[], { files }: Reviewed): readonly string[] {
  return Object.entries(files).flatMap(([file, entries]) => entries
    .filter((entry) => !found.some((one) => one.file === file && one.sentence === entry.sentence))
    .map((entry) => `${file} no longer says ${JSON.stringify(entry.sentence)}: take the line off ${REVIEWED_LIST}.`));
}
