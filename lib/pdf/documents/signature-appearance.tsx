import { Page, StyleSheet, View } from '@react-pdf/renderer';
import { PAPER_FONTS } from '../render/fonts/font-files';
import { COLOUR } from '../render/paper-colours';
import { PaperDocument } from '../render/paper-document';
import { TYPE } from '../render/paper-type';
import { Words } from '../render/words';

/** What is seen of a signature on its paper. All texts as they are to stand there. */
export interface SignatureAppearanceModel {
  /** points: the place it goes to */
  readonly width: number;
  readonly height: number;
  readonly name: string;
  /** post and employer, as "Safety officer, Tern Lane School" */
  readonly post: string;
  readonly reason: string;
  /** date, time and zone, and by whose clock */
  readonly when: string;
  /** the certificate, by the beginning of its fingerprint */
  readonly certificate: string;
  readonly language: string;
  readonly signedAt: Date;
}

/** The picture of a signature: one page as large as its place, with an opaque ground over what was there. */
export function SignatureAppearance({ model }: { readonly model: SignatureAppearanceModel }) {
  const facts = { title: 'Signature', author: model.name, subject: model.reason, language: model.language, createdAt: model.signedAt };
  return (
    <PaperDocument facts={facts}>
      <Page size={[model.width, model.height]} style={styles.page}>
        <View style={[styles.box, { height: model.height }]} wrap={false}>
          <Words style={[styles.name, { fontSize: nameSize(model.name) }]}>{model.name}</Words>
          <Words style={[styles.line, styles.two]}>{model.post}</Words>
          <Words style={styles.line}>{model.reason}</Words>
          <Words style={styles.line}>{model.when}</Words>
          <Words style={styles.line}>{model.certificate}</Words>
        </View>
      </Page>
    </PaperDocument>
  );
}

/** A long name is set smaller rather than cut; characters of the East take the room of two. */
function nameSize(name: string): number {
  const room = Array.from(name).reduce((sum, character) => sum + ((character.codePointAt(0) ?? 0) >= 0x2e80 ? 2 : 1), 0);
  return room <= 22 ? 16 : room <= 30 ? 12 : TYPE.table;
}

const styles = StyleSheet.create({
  page: { backgroundColor: COLOUR.sheet, color: COLOUR.ink, fontFamily: PAPER_FONTS, fontSize: TYPE.small },
  box: { borderWidth: 1.5, borderColor: COLOUR.ink, paddingHorizontal: 8, paddingVertical: 5, justifyContent: 'space-between' },
  // Name and post in full stand in the first section and in the certificate.
  name: { fontWeight: 700, maxLines: 2, textOverflow: 'ellipsis' },
  two: { maxLines: 2, textOverflow: 'ellipsis' },
  line: { fontSize: TYPE.small },
});
