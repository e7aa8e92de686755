import type { DocumentStatus } from '@/lib/pdf/verify/verdict';
import type { FormatDate, VerdictWords } from '@/lib/pdf/verify/words';

/**
 * What is said of a file that nobody signs (a card, a list, a sheet) and that is byte by byte one of ours. It never looks
 * as good as a signed one.
 */
export function unsignedInWords(status: DocumentStatus, format: FormatDate): VerdictWords {
  const same = 'It is byte by byte a file that the school made. Nobody signs papers of this kind.';
  switch (status.state) {
    case 'superseded': return { tone: 'stop', heading: 'Unchanged, no longer in force', sentences: [same, `A newer one took its place on ${format(status.since)}. Do not act on it.`] };
    case 'withdrawn': return { tone: 'stop', heading: 'Unchanged, no longer in force', sentences: [same, `It was withdrawn on ${format(status.since)}. Do not act on it.`] };
    case 'ended': return { tone: 'stop', heading: 'Unchanged, no longer in force', sentences: [same, `Its time ended on ${format(status.since)}.`] };
    default: return { tone: 'doubt', heading: 'Unchanged, made without a signature', sentences: [same, 'It is the latest one. What permits and who answers for it stands on the signed paper.'] };
  }
}
