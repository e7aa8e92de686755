import { rounded } from '@/lib/wording/numbers';
import { type Block, type PaperSection, text } from '../paper';
import type { AssessmentFacts } from './facts';
import { isRecord } from './records';

/**
 * Every answer, section by section, with its note and what shows it. What stands on a page of its own, because nobody
 * knows it or because it is a record, is not printed twice.
 */
export function answersAnnex({ answers, content }: AssessmentFacts): PaperSection {
  const blocks = content.sections.flatMap((section): readonly Block[] => {
    const rows = answers.filter((answer) => answer.section === section.id && answer.standing === 'answered' && !isRecord(answer.id));
    if (rows.length === 0) return [];
    return [{ kind: 'table', caption: section.title, columns: [{ head: 'Question', width: 3.8 }, { head: 'Answer, note', width: 6.9 }, { head: 'Evidence', width: 1.3 }], rows: rows.map((row) => [row.question, { text: row.answer, under: row.note }, row.evidence === '' ? 'none' : row.evidence]), empty: '' }];
  });
  const hidden = answers.filter((answer) => answer.standing === 'does not apply').map((answer) => answer.question);
  return { id: 'answers', title: 'Annex: answers', blocks: [text('What nobody is sure of or has not answered, and what is a record of training, drill or electricity, stands on pages of its own.', 'quiet'), ...blocks, ...(hidden.length === 0 ? [] : [text(`Not asked, because earlier answers say that they do not arise: ${hidden.join('; ')}`, 'quiet')])] };
}

export function packsAnnex({ packs }: AssessmentFacts): PaperSection {
  const isolated = packs.filter((pack) => pack.state === 'isolated').length;
  return { id: 'packs', title: 'Annex: packs', blocks: [text(`${packs.length} ${packs.length === 1 ? 'pack' : 'packs'} in the register, ${isolated === 0 ? 'none' : isolated} isolated.`), {
    kind: 'table', caption: 'The register on the day of signing',
    columns: [{ head: 'Label', width: 1.6 }, { head: 'Kind, full voltage', width: 3 }, { head: 'Wh', width: 0.8, align: 'right' }, { head: 'From', width: 2.9 }, { head: 'Last check', width: 2.3 }, { head: 'State', width: 1.3 }, { head: 'Place', width: 2.1 }],
    rows: packs.map((pack) => [pack.label, `${pack.kind}, ${pack.fullVoltage}`, pack.energyWh === null ? 'not known' : rounded(pack.energyWh), `${pack.source}, ${pack.age}`, pack.lastCheck, pack.state, pack.place]),
    empty: 'No pack is in the register.',
  }] };
}

export function incidentsAnnex({ incidents }: AssessmentFacts): PaperSection {
  return { id: 'incidents', title: 'Annex: what happened in the last three years', blocks: [{
    kind: 'table', caption: 'Incidents and near misses', columns: [{ head: 'No.', width: 1.4 }, { head: 'When', width: 2 }, { head: 'What', width: 4 }, { head: 'Done about it', width: 4 }, { head: 'State', width: 1.5 }],
    rows: incidents.map((one) => [one.number, one.when, one.what, one.done, one.state]), empty: 'None is recorded. That nothing was written down does not mean that nothing happened.',
  }] };
}
