import { readFileSync } from 'node:fs';
import { renderPaper } from '@/lib/pdf/render/render-paper';
import { PaperOfBlocks } from '@/lib/pdf/documents/paper-of-blocks';
import { createElement } from 'react';
import { assessmentPaper } from '@/lib/papers/assessment-paper';
import { assessmentFacts } from '@/tests/support/assessment-facts';
const doc = JSON.parse(readFileSync(`public/examples/ordinary-classroom.json`,'utf8'));
const paper = assessmentPaper(assessmentFacts(doc));
const groups: string[][] = []; for (const s of paper.sections) { if (s.ownPage || groups.length === 0) groups.push([s.id]); else groups.at(-1)!.push(s.id); }
for (const g of [[], ...groups]) { console.log('begin', g.join()); const b = await renderPaper(createElement(PaperOfBlocks, { paper: { ...paper, sections: paper.sections.filter((s) => g.includes(s.id)) } })); console.log(' done', b.length); }
process.exit(0);
