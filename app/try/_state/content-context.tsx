'use client';

import { createContext, type ReactNode, useContext } from 'react';
import { contentByVersion, currentContent } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';
import type { WholeDocument } from './whole-document';

const ContentContext = createContext<Content>(currentContent);

/** The edition that the open document belongs to; a document that names none belongs to the one in force. */
export function editionOf(whole: WholeDocument): Content {
  const version = whole['contentVersion'];
  return (typeof version === 'string' ? contentByVersion(version) : undefined) ?? currentContent;
}

export function ContentProvider({ content, children }: { readonly content: Content; readonly children: ReactNode }) {
  return <ContentContext value={content}>{children}</ContentContext>;
}

export const useContent = (): Content => useContext(ContentContext);
