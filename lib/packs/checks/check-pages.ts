/** Pages of the check form, in the content's order of steps; the steps of one page are seen at once. */
export const CHECK_PAGES = [
  { id: 'look', title: 'Look', steps: ['look'] },
  { id: 'listen', title: 'Listen and smell', steps: ['listen', 'smell'] },
  { id: 'warmth', title: 'Warmth', steps: ['warmth'] },
  { id: 'record', title: 'What is known of it', steps: ['record'] },
  { id: 'voltage', title: 'Voltage', steps: ['voltage', 'wear'] },
] as const;

export type CheckPageId = (typeof CHECK_PAGES)[number]['id'];
export const CHECK_PAGE_IDS = CHECK_PAGES.map(({ id }) => id) as readonly CheckPageId[];

/**
 * Returns the page after this one of which the check still asks a step, or null when nothing more is asked.
 * @param asked ids of the steps that the course of the check still holds
 */
export function pageAfter(page: CheckPageId, asked: readonly string[]): CheckPageId | null {
  const rest = CHECK_PAGES.slice(CHECK_PAGE_IDS.indexOf(page) + 1);
  return rest.find(({ steps }) => steps.some((step) => asked.includes(step)))?.id ?? null;
}

/** The pages up to and with this one. */
export function pagesUpTo(page: CheckPageId): readonly CheckPageId[] {
  return CHECK_PAGE_IDS.slice(0, CHECK_PAGE_IDS.indexOf(page) + 1);
}
