import { writeFileSync } from 'node:fs';
import { SignatureAppearance } from '@/lib/pdf/documents/signature-appearance';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { signatureBoxSize } from '@/lib/pdf/render/signature-boxes';
const size = signatureBoxSize('A4');
async function main() {
  const long = 'Wilhelmina Anastasia Konstantinopoulou-Featherstonehaugh of the Northern Consortium';
  writeFileSync('/tmp/papers/sig1.pdf', await renderPaper(<SignatureAppearance model={{ ...size, name: long, post: 'head of the department of design, technology and extracurricular sport, Federation of schools of the northern coast and its islands', reason: 'Prepared, and answers for what it says', when: '25 November 2026 at 20:01 (GMT+13), by the clock of this program', certificate: 'certificate 0123456789abcdef', language: 'en', signedAt: new Date(0) }} />));
}
void main();
