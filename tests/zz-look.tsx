import { writeFileSync } from 'node:fs';
import { edition2 } from '@/lib/content/edition-2';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import { PaperOfBlocks } from '@/lib/pdf/documents/paper-of-blocks';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { writableModel } from '@/lib/pdf/render/fonts/writable';
import { assessmentFacts } from '@/tests/support/assessment-facts';
import { referenceDocument } from '@/tests/support/reference-venues';
import { answersOnPaper } from '@/lib/server/signing/answers-on-paper';
import { versionRecord, answerRecord } from '@/tests/support/version-for-tests';

const words = (letters: number): string => 'Nobody charges there until it stands '.repeat(20).slice(0, letters - 1).trim();
const FIVE = edition2.stops.slice(0, 5).map((stop) => ({ stop: stop.id, reason: words(300), replacedBy: words(300), until: '12 December 2026', paper: words(160), by: 'Γιώργος Νικολάου' }));
async function main() {
for (const [room, format] of [['bad-store', 'A4'], ['ordinary-classroom', 'LETTER'], ['bad-store', 'LETTER'], ['ordinary-classroom', 'A4']] as const) {
  const document = referenceDocument(room);
  const version = versionRecord({ answers: Object.entries(document.answers).map(([id, value], i) => answerRecord(id, value as never, { note: i % 3 === 0 ? 'Seen on Monday with the caretaker, key 14' : '' })) });
  const answers = answersOnPaper(edition2, version, []);
  const base = assessmentFacts(document);
  const packs = Array.from({ length: 30 }, (_, i) => ({ ...base.packs[0]!, label: `HW-${String(i + 1).padStart(2, '0')}` }));
  const actions = ['Lay a slab under the chargers', 'Hang a notice at the door', 'Ask the fire authority for its limit'].map((what) => ({ what, owner: 'Å. Ł.', due: '9 January 2027', state: 'open' as const, note: '', control: null }));
  const facts = assessmentFacts(document, { format, answers, packs, actions, ...(room === 'ordinary-classroom' ? { acceptances: FIVE } : {}) });
  const t = Date.now();
  const pages: string[] = [];
  const pdf = await renderPaper(<PaperOfBlocks paper={writableModel(assessmentPaper(facts))} />, (n) => pages.push(`${n}@${Date.now() - t}`));
  console.log(room, format, pdf.length, Date.now() - t, 'ms', pages.filter((_, i) => i % 8 === 0).join(' '));
  writeFileSync(`/tmp/papers/${room}-${format}.pdf`, pdf);
}
}
void main();
