import { StyleSheet, View } from '@react-pdf/renderer';
import type { Block } from '@/lib/papers/paper';
import { COLOUR } from '../../render/paper-colours';
import { TYPE } from '../../render/paper-type';
import { Words } from '../../render/words';
import { INITIALS_ROW } from './sizes';

const ACROSS = 6;

/** Empty places, six beside one another, each with its number, room for initials and for the date. */
export function InitialsOnPaper({ block }: { readonly block: Extract<Block, { readonly kind: 'initials' }> }) {
  const places = Array.from({ length: block.places }, (_, index) => index + 1);
  return (
    <View style={styles.all} wrap={false}>
      <Words style={styles.caption}>{block.caption}</Words>
      <View style={styles.places}>
        {places.map((place) => <View key={place} style={[styles.place, place % ACROSS === 0 ? styles.last : {}]}><Words style={styles.number}>{place}</Words></View>)}
      </View>
    </View>
  );
}

const styles = StyleSheet.create({
  all: { marginTop: 8 },
  caption: { fontSize: TYPE.table, fontWeight: 700, lineHeight: 1.3, marginBottom: 3 },
  places: { flexDirection: 'row', flexWrap: 'wrap' },
  place: { width: `${100 / ACROSS}%`, height: INITIALS_ROW, paddingLeft: 3, paddingTop: 2, borderBottomWidth: 0.75, borderRightWidth: 0.75, borderColor: COLOUR.edge },
  last: { borderRightWidth: 0 },
  number: { fontSize: TYPE.small, color: COLOUR.ink2 },
});
