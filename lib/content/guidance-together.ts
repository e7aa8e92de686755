import type { Guidance, GuidanceText } from './model';

/**
 * Texts that are to stand on one page, in the order asked for.
 * @throws when there is no such text, or one says that it must never stand beside another of them: a page put
 * together wrongly must not be shown
 */
export function guidanceTogether({ texts }: Guidance, ids: readonly string[]): readonly GuidanceText[] {
  return ids.map((id) => {
    const text = texts.find((one) => one.id === id);
    if (text === undefined) throw new Error(`the guidance has no text ${id}`);
    const clash = text.neverBeside.find((rule) => 'guidance' in rule && ids.includes(rule.guidance));
    if (clash !== undefined) throw new Error(`${id} and ${'guidance' in clash ? clash.guidance : ''} never stand on one page: ${clash.why}`);
    return text;
  });
}
