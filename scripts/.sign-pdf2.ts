import { readFileSync, writeFileSync } from 'node:fs';
import { createElement } from 'react';
import { PaperOfBlocks } from '@/lib/pdf/documents/paper-of-blocks';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import { assessmentFacts } from '@/tests/support/assessment-facts';
import { answersOnPaper } from '@/lib/server/signing/answers-on-paper';
const cpu = () => { const u = process.cpuUsage(); return Math.round((u.user + u.system)/1000); };
for (const [name, format] of [['ordinary-classroom','A4'],['bad-store','LETTER'],['good-hall','A4']] as const) {
  const doc = JSON.parse(readFileSync(`public/examples/${name}.json`,'utf8'));
  const base = assessmentFacts(doc, { format });
  const version = { answers: Object.entries(doc.answers).map(([questionId, value]) => ({ questionId, value, notSureTicks: [], note: '', origin: 'typed', waitsFor: '', byName: 'x', at: new Date(0), revision: 1 })), settings: {}, id: 'x', title: 'x', contentVersion: '2.0.0' } as any;
  const packs = Array.from({ length: 24 }, (_, i) => ({ ...base.packs[0]!, label: `HW-${String(i+1).padStart(2,'0')}` }));
  const paper = assessmentPaper({ ...base, packs, answers: answersOnPaper(base.content, version, []) });
  const c = cpu(); const pdf = await renderPaper(createElement(PaperOfBlocks, { paper }));
  console.log(name, format, cpu() - c, 'ms cpu', pdf.length);
  writeFileSync(`/tmp/sign-pdf/${name}-${format}.pdf`, pdf);
}
process.exit(0);
