import { createContext } from 'react';

/** The telephone numbers that stand in the texts of a paper. */
export const Dialled = createContext<readonly string[]>([]);

export interface TextPart { readonly text: string; readonly dialled: boolean }

/** A text in parts: its telephone numbers, and what stands around them. A number that is part of a longer one is left. */
export function dialledParts(text: string, numbers: readonly string[]): readonly TextPart[] {
  const wanted = numbers.map((number) => number.trim()).filter((number) => number.includes('0')).sort((one, other) => other.length - one.length);
  if (wanted.length === 0) return [{ text, dialled: false }];
  const found = new RegExp(`(?<![\\d.,])(${wanted.map(literally).join('|')})(?!\\d|[.,]\\d)`, 'u');
  // Of a text that is split by a group, every other part is the group's.
  return text.split(found).map((part, index) => ({ text: part, dialled: index % 2 === 1 })).filter((part) => part.text !== '' || text === '');
}

const literally = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|/-]/g, '\\$&');
