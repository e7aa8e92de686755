import { View } from '@react-pdf/renderer';
import type { Scene } from '@/lib/charts/scene';
import { PaperDocument } from '@/lib/pdf/render/paper-document';
import { PaperPage, type PaperFrame } from '@/lib/pdf/render/paper-page';
import { textWidth, type PaperSize } from '@/lib/pdf/render/paper-size';
import { TYPE } from '@/lib/pdf/render/paper-type';
import { GradeShape } from '@/lib/pdf/render/grade-shape';
import { QrCode } from '@/lib/pdf/render/qr-code';
import { SceneDrawing } from '@/lib/pdf/render/scene-drawing';
import { SignatureBoxes } from '@/lib/pdf/render/signature-boxes';
import { Words } from '@/lib/pdf/render/words';
import { renderPaper } from '@/lib/pdf/render/render-paper';

export interface SamplePaper {
  readonly paper?: PaperSize;
  readonly lines?: readonly string[];
  readonly scenes?: readonly Scene[];
  readonly verifyAt?: string;
}

export const SAMPLE_MADE_AT = new Date('2026-11-25T09:00:00Z');

/** A small paper with everything that papers are made of: its cover has places for two signatures. */
export function renderSample({ paper = 'A4', lines = [], scenes = [], verifyAt }: SamplePaper = {}, onPage?: (pageNumber: number) => void): Promise<Uint8Array> {
  const frame: PaperFrame = { paper, title: 'Room 14, Tern Lane School', documentId: 'TL-26-0031', fingerprint: '9c41 07be 5d20 e83a' };
  const facts = { title: 'Assessment TL-26-0031', author: 'Tern Lane School', subject: 'Charging of packs', language: 'en-GB', createdAt: SAMPLE_MADE_AT };
  return renderPaper(
    <PaperDocument facts={facts}>
      <PaperPage frame={frame} section="Cover">
        <Words style={{ fontSize: TYPE.title, fontWeight: 700 }}>Room 14 and small hall</Words>
        <View style={{ flexDirection: 'row', gap: 4, marginTop: 8 }}><GradeShape grade="high" size={11} /><Words>High</Words></View>
        {lines.map((line, index) => <Words key={index} style={{ marginTop: 4 }}>{line}</Words>)}
        {verifyAt === undefined ? null : <QrCode text={verifyAt} size={80} />}
        <SignatureBoxes paper={paper} labels={{ Preparer: 'Prepared by', Officer: 'Checked and signed by' }} />
      </PaperPage>
      {scenes.map((scene, index) => (
        <PaperPage key={index} frame={frame} section={`Picture ${index + 1}`}>
          <SceneDrawing scene={scene} width={scene.width === 672 ? textWidth(paper) : textWidth(paper) / 2 - 8} />
          <Words style={{ marginTop: 6 }}>{scene.title}</Words>
        </PaperPage>
      ))}
    </PaperDocument>,
    onPage,
  );
}
