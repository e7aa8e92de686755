import { type FilledGuidance, fillGuidance } from '@/lib/content/fill-guidance';
import { guidanceTogether } from '@/lib/content/guidance-together';
import { type Block, heading, text } from '../paper';
import type { EventFacts } from './facts';

/**
 * Texts of the edition with the venue's own number and places in them.
 * @throws when two of them must never stand together: a fault of ours
 */
export function guidanceOf({ content, guidance }: Pick<EventFacts, 'content' | 'guidance'>, ids: readonly string[]): readonly FilledGuidance[] {
  return content.guidance === undefined ? [] : guidanceTogether(content.guidance, ids).map((one) => fillGuidance(one, guidance));
}

/** The same as blocks: a heading and its lines each. An edition without texts says that it has none. */
export function guidanceBlocks(facts: Pick<EventFacts, 'content' | 'guidance'>, ids: readonly string[]): readonly Block[] {
  const texts = guidanceOf(facts, ids);
  if (texts.length === 0) return [text('This edition has no guidance texts.', 'quiet')];
  return texts.flatMap((one): readonly Block[] => [heading(one.title), { kind: 'list', ordered: one.form === 'steps', items: one.lines }]);
}

/** What good looks like for some controls of the edition, one after the other. */
export function controlList({ content }: Pick<EventFacts, 'content'>, ids: readonly string[], ordered: boolean): Block {
  const found = ids.flatMap((id) => content.controls.filter((control) => control.id === id));
  return { kind: 'list', ordered, items: found.map(({ title, goodLooksLike }) => ({ lead: `${title}.`, text: goodLooksLike })) };
}
