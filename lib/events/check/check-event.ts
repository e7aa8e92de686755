import { airLines } from './air-lines';
import type { CheckFacts } from './facts';
import type { CheckLine } from './line';
import { packLines } from './pack-lines';
import { peopleLines } from './people-lines';
import { placeLines } from './place-lines';
import { roadLines } from './road-lines';
import { thereLines } from './there-lines';

/** A line that the officer let stand in writing. */
export interface LineAcceptance { readonly lineId: string; readonly reason: string; readonly byName: string; readonly at: Date; /** what it said when it was accepted */ readonly words: string }

export interface JudgedLine extends CheckLine {
  /** null unless it is failing or not known and the officer let it stand as it is */
  readonly accepted: LineAcceptance | null;
}

/** The check before an event leaves: every line, whether it passes, and how to mend it. What nobody knows never passes. */
export function checkEvent(facts: CheckFacts): readonly CheckLine[] {
  return [...placeLines(facts), ...packLines(facts), ...peopleLines(facts), ...thereLines(facts), ...roadLines(facts), ...airLines(facts)];
}

/**
 * The lines with what the officer accepted. An acceptance is of what the line said: when it says something else now,
 * more packs or another matter, it is open again.
 */
export function judgedLines(lines: readonly CheckLine[], acceptances: readonly LineAcceptance[]): readonly JudgedLine[] {
  return lines.map((line) => {
    const accepted = line.state === 'ok' || !line.mayBeAccepted ? undefined : acceptances.find(({ lineId, words }) => lineId === line.id && words === line.words);
    return { ...line, accepted: accepted ?? null };
  });
}

/** Lines that still stand in the way of a signature. */
export function openLines(lines: readonly JudgedLine[]): readonly JudgedLine[] {
  return lines.filter(({ state, accepted }) => state !== 'ok' && accepted === null);
}
