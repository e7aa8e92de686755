import type { DocumentRecord } from '@/lib/db/documents/document-status';
import type { DocumentStatus } from '@/lib/pdf/verify/verdict';
import type { VerdictWords } from '@/lib/pdf/verify/words';

/** What is said of the number on a printed page. */
export interface NumberWords { readonly tone: VerdictWords['tone']; readonly heading: string; readonly sentence: string }

const CHECK_THE_FILE = 'Check the file itself to know that what you hold was not changed.';

/** What the records say of a paper, in words; null when no school here made one of this number. */
export function numberInWords(paper: { readonly state: DocumentRecord['state']; readonly status: DocumentStatus } | null, format: (date: Date) => string): NumberWords {
  if (paper === null) return { tone: 'stop', heading: 'No paper of this number', sentence: 'Look at the number again; it stands at the foot of every page. If it is right, no school here made this paper.' };
  const { state, status } = paper;
  if (state === 'made' && status.state === 'in-force') return { tone: 'good', heading: 'The paper of this number is the latest', sentence: `${status.until === undefined ? '' : `It is for ${format(status.until)}. `}Nobody signs papers of this kind, so only the file itself can be checked, not what is printed on a page.` };
  if (state !== 'signed' && (status.state === 'in-force' || status.state === 'under-review')) return { tone: 'stop', heading: 'Not finished: a signature is missing', sentence: 'A paper of this number is waiting to be signed. It is not in force.' };
  switch (status.state) {
    case 'in-force': return status.about === 'incident' ? { tone: 'good', heading: 'The paper of this number is the record that counts', sentence: CHECK_THE_FILE } : { tone: 'good', heading: 'The paper of this number is in force', sentence: status.until === undefined ? CHECK_THE_FILE : `Until ${format(status.until)}, unless something changes before. ${CHECK_THE_FILE}` };
    case 'under-review': return { tone: 'doubt', heading: `Review asked since ${format(status.since)}`, sentence: status.about === 'incident' ? 'The incident was opened again since. Ask the school what is known now.' : 'Something happened that it did not reckon with. Ask the school before you rely on it.' };
    case 'suspended': return { tone: 'stop', heading: `Suspended since ${format(status.since)}`, sentence: `The safety officer has suspended it. Do not act on it. Reason: ${status.reason}` };
    case 'superseded': return { tone: 'stop', heading: 'No longer in force', sentence: `A newer one took its place on ${format(status.since)}.` };
    case 'withdrawn': return { tone: 'stop', heading: 'No longer in force', sentence: `It was withdrawn on ${format(status.since)}.` };
    case 'ended': return { tone: 'stop', heading: 'No longer in force', sentence: `Its time ended on ${format(status.since)}.` };
    case 'no-record':
    case 'not-asked': return { tone: 'doubt', heading: 'Not known', sentence: 'There is no record of it.' };
  }
}
