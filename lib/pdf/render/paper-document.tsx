import { Document } from '@react-pdf/renderer';
import type { ReactNode } from 'react';

export interface PaperFacts {
  readonly title: string;
  /** the school, who answers for the paper */
  readonly author: string;
  readonly subject: string;
  /** as en-GB: the language the paper is written in */
  readonly language: string;
  /** when the paper was made: an input, so that the same input gives the same bytes */
  readonly createdAt: Date;
}

/** The root of every paper. */
export function PaperDocument({ facts, children }: { readonly facts: PaperFacts; readonly children: ReactNode }) {
  return (
    <Document title={facts.title} author={facts.author} subject={facts.subject} language={facts.language} creationDate={facts.createdAt} creator="Sandbucket" producer="Sandbucket" pdfVersion="1.7">
      {children}
    </Document>
  );
}
