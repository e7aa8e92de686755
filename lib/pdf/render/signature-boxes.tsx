import { StyleSheet, View } from '@react-pdf/renderer';
import { COLOUR } from './paper-colours';
import { MARGIN, PAPER, textWidth, type PaperSize } from './paper-size';
import { TYPE } from './paper-type';
import { Words } from './words';

/** Whoever signs, by the names of the fields. */
export type SigningRole = 'Preparer' | 'Officer';

/** Size of the place for a signature, points. */
export interface SignatureBoxSize { readonly width: number; readonly height: number }

const GAP = 14;
const HEIGHT = 106;
const ABOVE_FOOTER = 8;
/** Above the box stands whose it is. */
const LABEL = 26;

export function signatureBoxSize(paper: PaperSize): SignatureBoxSize {
  return { width: (textWidth(paper) - GAP) / 2, height: HEIGHT };
}

/** Where the place for a signature is on its page: left, bottom, right, top in points from the lower left corner. */
export function signatureRectangle(paper: PaperSize, role: SigningRole): readonly [number, number, number, number] {
  const { width, height } = signatureBoxSize(paper);
  const left = MARGIN.left + (role === 'Preparer' ? 0 : width + GAP);
  const bottom = MARGIN.bottom + ABOVE_FOOTER;
  return [left, bottom, left + width, bottom + height];
}

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
      <View key={role} style={[styles.place, { left, top: PAPER[paper].height - top - LABEL, width: right - left }]}>
        <View style={styles.above}><Words style={styles.label}>{label}</Words></View>
        <View style={styles.box} />
      </View>
    );
  });
}

/** Height that the places take at the foot of a page, points. */
export const SIGNATURES_HEIGHT = HEIGHT + LABEL + ABOVE_FOOTER;

const styles = StyleSheet.create({
  place: { position: 'absolute' },
  above: { height: LABEL, paddingBottom: 2, justifyContent: 'flex-end' },
  // The name in full stands in the first section.
  label: { fontSize: TYPE.small, maxLines: 2, textOverflow: 'ellipsis' },
  box: { height: HEIGHT, borderWidth: 1, borderColor: COLOUR.ink },
});
