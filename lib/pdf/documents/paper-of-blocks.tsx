import { StyleSheet, View } from '@react-pdf/renderer';
import type { Block, Paper, PaperSection } from '@/lib/papers/paper';
import { Dialled } from '../render/dialled';
import { PaperDocument } from '../render/paper-document';
import { type PaperFrame, PaperPage } from '../render/paper-page';
import { TYPE } from '../render/paper-type';
import { Words } from '../render/words';
import { BlocksOnPaper } from './blocks/block';
import { presenceOf } from './blocks/presence';
import { CoverPage } from './cover-page';

/** A paper out of its blocks: the cover, then the sections, each group that belongs together on pages of its own. */
export function PaperOfBlocks({ paper }: { readonly paper: Paper }) {
  const frame: PaperFrame = { paper: paper.format, title: paper.title, documentId: paper.number, fingerprint: paper.fingerprint, ...(paper.caution === undefined ? {} : { caution: paper.caution }) };
  const facts = { title: `${paper.title} ${paper.number}`, author: paper.author, subject: paper.subtitle, language: paper.language, createdAt: new Date(paper.madeAt) };
  return (
    <PaperDocument facts={facts}>
      <Dialled value={paper.dialled ?? []}>
        <CoverPage paper={paper} frame={frame} />
        {groupsOf(paper.sections).map((group) => (
          <PaperPage key={group[0]?.section.id} frame={frame} section={namesOf(group)}>
            {group.map(({ section, number }, index) => <SectionOnPaper key={section.id} section={section} number={number} first={index === 0} format={paper.format} />)}
          </PaperPage>
        ))}
      </Dialled>
    </PaperDocument>
  );
}

interface Numbered { readonly section: PaperSection; readonly number: number }

/** Sections that follow one another on the same pages; one with a page of its own begins a new group. */
function groupsOf(sections: readonly PaperSection[]): readonly (readonly Numbered[])[] {
  const groups: Numbered[][] = [];
  sections.forEach((section, index) => {
    const last = groups.at(-1);
    const numbered = { section, number: index + 1 };
    if (last === undefined || section.ownPage === true) groups.push([numbered]);
    else last.push(numbered);
  });
  return groups;
}

/** At the head of the pages: the section, or which sections share them. */
function namesOf(group: readonly Numbered[]): string {
  const [first, last] = [group[0], group.at(-1)];
  if (first === undefined || last === undefined) return '';
  return first === last ? `${first.number} ${first.section.title}` : `Sections ${first.number} to ${last.number}`;
}

/** Its parts stand side by side on the page: what is first in a box of its own is never moved to the next page. */
function SectionOnPaper({ section, number, first, format }: Numbered & { readonly first: boolean; readonly format: Paper['format'] }) {
  const ahead = openingPresence(section.blocks, format);
  return (
    <>
      <View style={first ? styles.heading : [styles.heading, styles.next]} minPresenceAhead={ahead} wrap={false}><Words style={styles.words}>{`${number} ${section.title}`}</Words></View>
      <BlocksOnPaper blocks={section.blocks} format={format} />
    </>
  );
}

/** What has to stand below the head of a section: its first words, and the beginning of what they lead up to. */
function openingPresence(blocks: readonly Block[], format: Paper['format']): number {
  const solid = blocks.findIndex(({ kind }) => kind !== 'heading' && kind !== 'text');
  return blocks.slice(0, solid === -1 ? 1 : solid + 1).reduce((sum, block) => sum + presenceOf(block, format), 0);
}

const styles = StyleSheet.create({
  next: { marginTop: 22 },
  heading: { marginBottom: 8 },
  words: { fontSize: TYPE.heading, fontWeight: 700, lineHeight: 1.2 },
});
