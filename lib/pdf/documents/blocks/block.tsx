import { StyleSheet, View } from '@react-pdf/renderer';
import type { Block, Paper, Tone } from '@/lib/papers/paper';
import { COLOUR } from '../../render/paper-colours';
import { textWidth } from '../../render/paper-size';
import { TYPE } from '../../render/paper-type';
import { SceneDrawing } from '../../render/scene-drawing';
import { Words } from '../../render/words';
import { InitialsOnPaper } from './initials';
import { presenceOf, wordsStayWhole } from './presence';
import { StepsOnPaper } from './steps';
import { TableOnPaper } from './table';

interface OnPaper<Kind extends Block['kind']> { readonly block: Extract<Block, { readonly kind: Kind }> }

/** Blocks one after the other; what heads something knows how much of it has to stay with it. */
export function BlocksOnPaper({ blocks, format }: { readonly blocks: readonly Block[]; readonly format: Paper['format'] }) {
  return blocks.map((block, index) => {
    const next = blocks[index + 1];
    return <BlockOnPaper key={index} block={block} format={format} ahead={next === undefined ? 0 : presenceOf(next, format)} />;
  });
}

interface BlockProps { readonly block: Block; readonly format: Paper['format']; /** points that a heading needs below it */ readonly ahead: number }

/** One block of a paper, as it stands on a page. */
function BlockOnPaper({ block, format, ahead }: BlockProps) {
  switch (block.kind) {
    case 'heading': return <View style={styles.heading} minPresenceAhead={ahead} wrap={false}><Words style={styles.headingWords}>{block.text}</Words></View>;
    case 'text': return <Words style={[styles.text, TONES[block.tone ?? 'plain']]}>{block.text}</Words>;
    case 'facts': return <FactsOnPaper block={block} format={format} />;
    case 'list': return block.columns === 2 ? <ListInTwo items={block.items} /> : <ListOnPaper block={block} format={format} />;
    case 'table': return <TableOnPaper block={block} format={format} />;
    case 'figure': return <FigureOnPaper block={block} format={format} />;
    case 'notice': return <NoticeOnPaper block={block} />;
    case 'steps': return <StepsOnPaper block={block} />;
    case 'initials': return <InitialsOnPaper block={block} />;
  }
}

function FactsOnPaper({ block, format }: OnPaper<'facts'> & { readonly format: Paper['format'] }) {
  const inTwo = block.columns === 2;
  const width = textWidth(format) / (inTwo ? 2 : 1) - 150;
  return (
    <View style={inTwo ? [styles.facts, styles.inTwo] : styles.facts}>
      {block.rows.map(({ name, value, under }, index) => (
        <View key={index} style={inTwo ? [styles.fact, styles.half] : styles.fact} wrap={!wordsStayWhole(`${value} ${under ?? ''}`, width)}>
          <Words style={inTwo ? [styles.factName, styles.halfName] : styles.factName}>{name}</Words>
          <View style={styles.factValue}>
            <Words style={styles.value}>{value}</Words>
            {under === undefined ? null : <Words style={styles.under}>{under}</Words>}
          </View>
        </View>
      ))}
    </View>
  );
}

function ListOnPaper({ block, format }: OnPaper<'list'> & { readonly format: Paper['format'] }) {
  const size = block.small === true ? styles.smallWords : {};
  return (
    <View style={styles.list}>
      {block.items.map(({ lead, text }, index) => (
        <View key={index} style={block.small === true ? styles.smallItem : styles.item} wrap={!wordsStayWhole(`${lead} ${text ?? ''}`, textWidth(format) - 20)}>
          <Words style={[styles.mark, size]}>{block.ordered === true ? String(index + 1) : '–'}</Words>
          <Words style={[styles.itemWords, size]}><Words style={styles.strong}>{lead}</Words>{text === undefined ? '' : ` ${text}`}</Words>
        </View>
      ))}
    </View>
  );
}

/** Read from left to right, so that a page ends between two rows. */
function ListInTwo({ items }: Pick<OnPaper<'list'>['block'], 'items'>) {
  const rows = items.flatMap((item, index) => (index % 2 === 0 ? [items.slice(index, index + 2)] : []));
  return (
    <View style={styles.list}>
      {rows.map((row, index) => (
        <View key={index} style={styles.pair} wrap={false}>
          {row.map(({ lead }) => <View key={lead} style={styles.ofPair}><Words style={[styles.mark, styles.smallWords, styles.plainMark]}>–</Words><Words style={[styles.itemWords, styles.smallWords]}>{lead}</Words></View>)}
        </View>
      ))}
    </View>
  );
}

function FigureOnPaper({ block, format }: OnPaper<'figure'> & { readonly format: Paper['format'] }) {
  return (
    <View style={styles.figure} wrap={false}>
      <SceneDrawing scene={block.scene} width={textWidth(format)} />
      <Words style={styles.caption}>{`${block.scene.title} ${block.caption}`}</Words>
    </View>
  );
}

function NoticeOnPaper({ block }: OnPaper<'notice'>) {
  return (
    <View style={[styles.notice, block.presses === true ? styles.presses : {}]} wrap={false}>
      <Words style={[styles.noticeTitle, block.presses === true ? { color: COLOUR.ember } : {}]}>{block.title}</Words>
      <Words style={styles.text}>{block.text}</Words>
    </View>
  );
}

// Space stands above a block, never below: the writer moves a block to the next page whole when only the space below it
// does not fit, and leaves its head behind.
const styles = StyleSheet.create({
  heading: { marginTop: 9, marginBottom: 3 },
  headingWords: { fontSize: TYPE.subheading, fontWeight: 700, lineHeight: 1.25 },
  text: { marginTop: 5, fontSize: TYPE.body, lineHeight: 1.4 },
  facts: { marginTop: 9, borderTopWidth: 0.75, borderTopColor: COLOUR.line },
  fact: { flexDirection: 'row', gap: 10, paddingTop: 3, paddingBottom: 3, borderBottomWidth: 0.75, borderBottomColor: COLOUR.line },
  inTwo: { flexDirection: 'row', flexWrap: 'wrap', columnGap: 14 },
  half: { width: '48%' },
  halfName: { width: 92 },
  smallWords: { fontSize: TYPE.small, lineHeight: 1.3 },
  factName: { width: 150, fontSize: TYPE.table, lineHeight: 1.3, color: COLOUR.ink2 },
  factValue: { flex: 1 },
  value: { fontSize: TYPE.body, lineHeight: 1.3 },
  under: { fontSize: TYPE.small, lineHeight: 1.3, color: COLOUR.ink2 },
  list: { marginTop: 6 },
  item: { flexDirection: 'row', gap: 6, marginBottom: 2 },
  smallItem: { flexDirection: 'row', gap: 6, marginBottom: 2 },
  pair: { flexDirection: 'row', gap: 14, marginBottom: 1.5 },
  ofPair: { width: '48.5%', flexDirection: 'row', gap: 2 },
  plainMark: { width: 9, fontWeight: 400 },
  mark: { width: 14, fontSize: TYPE.body, lineHeight: 1.4, fontWeight: 700 },
  itemWords: { flex: 1, fontSize: TYPE.body, lineHeight: 1.4 },
  strong: { fontWeight: 700 },
  figure: { marginTop: 10 },
  caption: { marginTop: 5, fontSize: TYPE.small, lineHeight: 1.35 },
  notice: { marginTop: 10, padding: 8, borderWidth: 1.25, borderColor: COLOUR.ink },
  presses: { borderColor: COLOUR.ember, borderWidth: 2.5 },
  noticeTitle: { fontSize: TYPE.heading, fontWeight: 700, lineHeight: 1.2 },
});

const TONES: Readonly<Record<Tone, { readonly fontSize?: number; readonly fontWeight?: number; readonly color?: string }>> = {
  plain: {},
  strong: { fontWeight: 700 },
  quiet: { fontSize: TYPE.small, color: COLOUR.ink2 },
  presses: { fontWeight: 700, color: COLOUR.ember },
};
