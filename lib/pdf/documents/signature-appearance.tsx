import { Page, StyleSheet, Text, View } from '@react-pdf/renderer';
import { PAPER_FONTS } from '../render/fonts/font-files';
import { COLOUR } from '../render/paper-colours';
import { PaperDocument } from '../render/paper-document';
import { TYPE } from '../render/paper-type';

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
        <View style={styles.box}>
          <Text style={[styles.name, { fontSize: nameSize(model.name) }]}>{model.name}</Text>
          <Text style={styles.line}>{model.post}</Text>
          <Text style={styles.line}>{model.reason}</Text>
          <Text style={styles.line}>{model.when}</Text>
          <Text style={styles.line}>{model.certificate}</Text>
        </View>
      </Page>
    </PaperDocument>
  );
}

/** A long name is set smaller rather than cut. */
function nameSize(name: string): number {
  return name.length <= 22 ? 16 : name.length <= 34 ? 12 : TYPE.table;
}

const styles = StyleSheet.create({
  page: { backgroundColor: COLOUR.sheet, color: COLOUR.ink, fontFamily: PAPER_FONTS, fontSize: TYPE.small },
  box: { flexGrow: 1, borderWidth: 1.5, borderColor: COLOUR.ink, paddingHorizontal: 8, paddingVertical: 5, justifyContent: 'space-between' },
  name: { fontWeight: 700 },
  line: { fontSize: TYPE.small },
});
