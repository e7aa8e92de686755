import { Page, StyleSheet, View } from '@react-pdf/renderer';
import { useContext, type ReactNode } from 'react';
import { CAUTION } from '@/lib/wording/caution';
import { PAPER_FONTS } from './fonts/font-files';
import { PageReport } from './page-report';
import { COLOUR } from './paper-colours';
import { MARGIN, type PaperSize } from './paper-size';
import { TYPE } from './paper-type';
import { Words } from './words';

/** What stands around every page of one paper. */
export interface PaperFrame {
  readonly paper: PaperSize;
  readonly title: string;
  readonly documentId: string;
  /** short fingerprint of what the paper was made from, to be compared by eye */
  readonly fingerprint: string;
  /** where more is to be said than on every paper */
  readonly caution?: string;
}

interface PaperPageProps {
  readonly frame: PaperFrame;
  /** what this part of the paper is about, top right */
  readonly section: string;
  readonly children: ReactNode;
}

/**
 * One part of a paper, on as many pages as it takes: title and section above; below the caution, the document's
 * number and fingerprint, and page x of y. A page of its own for each section keeps long papers fast.
 */
export function PaperPage({ frame, section, children }: PaperPageProps) {
  return (
    <Page size={frame.paper} style={styles.page}>
      <View style={styles.header} fixed>
        <Words style={[styles.small, styles.title]}>{frame.title}</Words>
        <Words style={styles.small}>{section}</Words>
      </View>
      {children}
      <Footer frame={frame} />
    </Page>
  );
}

function Footer({ frame }: { readonly frame: PaperFrame }) {
  const report = useContext(PageReport);
  return (
    <View style={styles.footer} fixed>
      <Words style={styles.small}>{frame.caution ?? CAUTION}</Words>
      <View style={styles.numbers}>
        <Words style={styles.small}>{frame.documentId}</Words>
        <Words style={styles.small}>{frame.fingerprint}</Words>
        <Words
          style={styles.small}
          render={({ pageNumber, totalPages }) => {
            report(pageNumber);
            return `page ${pageNumber} of ${totalPages}`;
          }}
        />
      </View>
    </View>
  );
}

const styles = StyleSheet.create({
  // No line height here: the writer then loses texts that are made while pages are counted.
  page: { paddingLeft: MARGIN.left, paddingRight: MARGIN.right, paddingTop: MARGIN.top, paddingBottom: MARGIN.bottom, backgroundColor: COLOUR.sheet, color: COLOUR.ink, fontFamily: PAPER_FONTS, fontSize: TYPE.body },
  header: { position: 'absolute', top: 30, left: MARGIN.left, right: MARGIN.right, flexDirection: 'row', justifyContent: 'space-between', gap: 12, paddingBottom: 5, borderBottomWidth: 1.5, borderBottomColor: COLOUR.ink },
  footer: { position: 'absolute', bottom: 28, left: MARGIN.left, right: MARGIN.right, paddingTop: 5, gap: 3, borderTopWidth: 0.75, borderTopColor: COLOUR.ink },
  numbers: { flexDirection: 'row', justifyContent: 'space-between', gap: 12 },
  small: { fontSize: TYPE.small },
  // Two lines are all the room there is above the text.
  title: { flex: 1, maxLines: 2, textOverflow: 'ellipsis' },
});
