import { StyleSheet, View } from '@react-pdf/renderer';
import type { Block, Cell, Column, Paper } from '@/lib/papers/paper';
import { GradeShape } from '../../render/grade-shape';
import { COLOUR } from '../../render/paper-colours';
import { textWidth } from '../../render/paper-size';
import { TYPE } from '../../render/paper-type';
import { Words } from '../../render/words';
import { COLUMN_GAP, rowStaysWhole, tablePresence } from './presence';

type Table = Extract<Block, { readonly kind: 'table' }>;

/**
 * A table whose head comes again on every page, and whose rows are never torn. The caption stands before the part that
 * repeats, so that a page on which no row fits has neither; it is kept whole, since the writer forgets what has to stand
 * ahead of something that reaches over the foot of a page.
 */
export function TableOnPaper({ block, format }: { readonly block: Table; readonly format: Paper['format'] }) {
  const { caption, columns, rows, empty } = block;
  const ahead = tablePresence(columns, rows[0], empty, textWidth(format));
  return (
    <>
      <View style={styles.captionPlace} minPresenceAhead={ahead} wrap={false}><Words style={styles.caption}>{caption}</Words></View>
      <View>
        {rows.length === 0
          ? <Words style={styles.empty}>{empty}</Words>
          : <><HeadRow columns={columns} />{rows.map((row, index) => <Row key={index} columns={columns} cells={row} whole={rowStaysWhole(columns, row, format)} />)}</>}
      </View>
    </>
  );
}

function HeadRow({ columns }: { readonly columns: readonly Column[] }) {
  return (
    <View style={styles.head} fixed>
      {columns.map((column, index) => <View key={index} style={{ flex: column.width }}><Words style={[styles.headWords, alignOf(column)]}>{column.head}</Words></View>)}
    </View>
  );
}

function Row({ columns, cells, whole }: { readonly columns: readonly Column[]; readonly cells: readonly Cell[]; readonly whole: boolean }) {
  return (
    <View style={styles.row} wrap={!whole}>
      {columns.map((column, index) => <View key={index} style={{ flex: column.width }}><CellOnPaper cell={cells[index] ?? ''} column={column} /></View>)}
    </View>
  );
}

function CellOnPaper({ cell, column }: { readonly cell: Cell; readonly column: Column }) {
  if (typeof cell === 'string') return <Words style={[styles.cell, alignOf(column)]}>{cell}</Words>;
  if ('grade' in cell) {
    return (
      <>
        <View style={styles.grade}><GradeShape grade={cell.grade} size={10} /><Words style={styles.cell}>{cell.word}</Words></View>
        {cell.note === undefined ? null : <Words style={styles.under}>{cell.note}</Words>}
      </>
    );
  }
  return (
    <>
      {cell.text === '' ? null : <Words style={[styles.cell, alignOf(column)]}>{cell.text}</Words>}
      {cell.under === '' ? null : <Words style={[styles.under, alignOf(column)]}>{cell.under}</Words>}
    </>
  );
}

const alignOf = (column: Column): { readonly textAlign?: 'right' } => (column.align === undefined ? {} : { textAlign: column.align });

const styles = StyleSheet.create({
  captionPlace: { marginTop: 13 },
  caption: { fontSize: TYPE.subheading, fontWeight: 700, lineHeight: 1.25, paddingBottom: 3 },
  empty: { fontSize: TYPE.table, lineHeight: 1.35, color: COLOUR.ink2 },
  head: { flexDirection: 'row', gap: COLUMN_GAP, paddingBottom: 2, borderBottomWidth: 1, borderBottomColor: COLOUR.ink },
  headWords: { fontSize: TYPE.small, fontWeight: 700, lineHeight: 1.25 },
  row: { flexDirection: 'row', gap: COLUMN_GAP, paddingTop: 2, paddingBottom: 2.5, borderBottomWidth: 0.5, borderBottomColor: COLOUR.line },
  cell: { fontSize: TYPE.table, lineHeight: 1.3 },
  under: { fontSize: TYPE.small, lineHeight: 1.25, color: COLOUR.ink2 },
  grade: { flexDirection: 'row', gap: 3, alignItems: 'center' },
});
