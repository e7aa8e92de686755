import { Link, StyleSheet, View } from '@react-pdf/renderer';
import type { Paper } from '@/lib/papers/paper';
import { type PaperFrame, PaperPage } from '../render/paper-page';
import { COLOUR } from '../render/paper-colours';
import { TYPE } from '../render/paper-type';
import { QrCode } from '../render/qr-code';
import { SignatureBoxes } from '../render/signature-boxes';
import { SIGNATURES_HEIGHT } from '../render/signature-geometry';
import { Words } from '../render/words';
import { BlocksOnPaper } from './blocks/block';

const CODE = 74;

/** What it is about and what it comes to, how to check it, and the places for signatures at its foot. */
export function CoverPage({ paper, frame }: { readonly paper: Paper; readonly frame: PaperFrame }) {
  const labels = Object.fromEntries(paper.signatures.map((place) => [place.field, `${place.title}: ${place.name}, ${place.post}`]));
  return (
    <PaperPage frame={frame} section="Cover">
      <View style={styles.head}>
        <View style={styles.title}>
          <Words style={styles.name}>{paper.title}</Words>
          <Words style={styles.subtitle}>{paper.subtitle}</Words>
        </View>
        <View style={styles.check}>
          <QrCode text={paper.verifyAt} size={CODE} />
        </View>
      </View>
      <Words style={styles.how}>{`To check that nothing was changed, and whether it still holds: scan, or hand the file in at ${paper.verifyAt}`}</Words>
      {paper.twinAt === undefined ? null : <TwinAt address={paper.twinAt} />}
      <BlocksOnPaper blocks={paper.cover} format={paper.format} />
      {paper.signatures.length === 0 ? null : <><View style={{ height: SIGNATURES_HEIGHT }} wrap={false} /><SignatureBoxes paper={paper.format} labels={labels} /></>}
    </PaperPage>
  );
}

/** The way to the page that says the same, for readers whose aids do not read a file of this kind well. */
function TwinAt({ address }: { readonly address: string }) {
  return <Words style={styles.read}>{'The same words as a page, for screen readers: '}<Link src={address} style={styles.link}>{address}</Link></Words>;
}

const styles = StyleSheet.create({
  head: { flexDirection: 'row', gap: 16, alignItems: 'flex-start' },
  title: { flex: 1 },
  name: { fontSize: TYPE.title, fontWeight: 700, lineHeight: 1.15 },
  subtitle: { marginTop: 6, fontSize: TYPE.body, lineHeight: 1.35 },
  check: { width: CODE },
  read: { marginBottom: 4, fontSize: TYPE.small, lineHeight: 1.3 },
  link: { color: COLOUR.ink },
  how: { marginTop: 6, marginBottom: 4, fontSize: TYPE.small, lineHeight: 1.3 },
});
