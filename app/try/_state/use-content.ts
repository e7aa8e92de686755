import { currentContent } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';

/** The edition the page reads every document with: the one in force, whatever edition it was written for. */
export const useContent = (): Content => currentContent;
