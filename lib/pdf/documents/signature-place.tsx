import { Page, StyleSheet, View } from '@react-pdf/renderer';
import { PAPER_FONTS } from '../render/fonts/font-files';
import { COLOUR } from '../render/paper-colours';
import { PaperDocument } from '../render/paper-document';
import { TYPE } from '../render/paper-type';
import { Words } from '../render/words';

export interface SignaturePlaceModel {
  /** points */
  readonly width: number;
  readonly height: number;
  /** as "not signed" */
  readonly words: string;
  readonly language: string;
  readonly createdAt: Date;
}

/** What stands in a place for a signature until somebody signs there. */
export function SignaturePlace({ model }: { readonly model: SignaturePlaceModel }) {
  const facts = { title: model.words, author: '', subject: '', language: model.language, createdAt: model.createdAt };
  return (
    <PaperDocument facts={facts}>
      <Page size={[model.width, model.height]} style={styles.page}>
        <View style={[styles.box, { height: model.height }]} wrap={false}><Words style={styles.words}>{model.words}</Words></View>
      </Page>
    </PaperDocument>
  );
}

const styles = StyleSheet.create({
  page: { color: COLOUR.ink2, fontFamily: PAPER_FONTS, fontSize: TYPE.small },
  box: { borderWidth: 1, borderColor: COLOUR.ink, alignItems: 'center', justifyContent: 'center' },
  words: { fontSize: TYPE.small },
});
