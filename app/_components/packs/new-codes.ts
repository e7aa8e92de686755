/** Looks after which a code that is out of the picture may come anew: two seconds, so that a hand that trembles reads nothing twice. */
const GONE_AFTER_LOOKS = 8;

/**
 * Returns a reader of pictures: of the codes in each it gives one that has just come into view, else null. A label that
 * is held still counts once, and of several that lie beside each other each counts once.
 */
export function newCodes(): (codes: readonly string[]) => string | null {
  const seenAt = new Map<string, number>();
  let look = 0;
  const isNew = (code: string): boolean => look - (seenAt.get(code) ?? -Infinity) > GONE_AFTER_LOOKS;
  return (codes) => {
    look += 1;
    const [came] = codes.filter(isNew);
    for (const code of codes) if (code === came || !isNew(code)) seenAt.set(code, look);
    return came ?? null;
  };
}
