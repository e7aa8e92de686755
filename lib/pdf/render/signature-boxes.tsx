import { StyleSheet, View } from '@react-pdf/renderer';
import { COLOUR } from './paper-colours';
import { PAPER, type PaperSize } from './paper-size';
import { TYPE } from './paper-type';
import { BOX_HEIGHT, LABEL_HEIGHT, signatureRectangle, type SigningRole } from './signature-geometry';
import { Words } from './words';

/**
 * The places for signatures, at the foot of the page it stands on: leave SIGNATURES_HEIGHT free above it. What is in
 * them, "not signed" to begin with, belongs to their fields, so that signing takes it away.
 */
export function SignatureBoxes({ paper, labels }: { readonly paper: PaperSize; readonly labels: Partial<Record<SigningRole, string>> }) {
  return (['Preparer', 'Officer'] as const).map((role) => {
    const label = labels[role];
    if (label === undefined) return null;
    const [left, , right, top] = signatureRectangle(paper, role);
    return (
      <View key={role} style={[styles.place, { left, top: PAPER[paper].height - top - LABEL_HEIGHT, width: right - left }]}>
        <View style={styles.above}><Words style={styles.label}>{label}</Words></View>
        <View style={styles.box} />
      </View>
    );
  });
}

const styles = StyleSheet.create({
  place: { position: 'absolute' },
  above: { height: LABEL_HEIGHT, paddingBottom: 2, justifyContent: 'flex-end' },
  // The name in full stands in the first section.
  label: { fontSize: TYPE.small, maxLines: 2, textOverflow: 'ellipsis' },
  box: { height: BOX_HEIGHT, borderWidth: 1, borderColor: COLOUR.ink },
});
