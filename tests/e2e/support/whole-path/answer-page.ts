import type { Page } from '@playwright/test';

type Said = string | number | Readonly<Record<string, string | number>>;
/** Answers as a document has them: by question, of a table or of ticks by its parts. */
export type Answers = Readonly<Record<string, Said>>;

interface Field {
  readonly name: string;
  readonly kind: string;
}

/** Answers every question of the page that the answers know of; a question that an earlier answer will take away is left. */
export async function answerPage(page: Page, answers: Answers): Promise<void> {
  for (const { name, kind } of await fieldsOf(page)) {
    const wanted = wantedIn(name, answers);
    if (wanted === undefined) continue;
    if (kind === 'radio') await page.locator(`input[name="${name}"][value="${wanted}"]`).check();
    else await page.locator(`input[name="${name}"]:not([type=checkbox])`).fill(wanted);
  }
}

/** The fields of the answers, each once, without those beside them: "not sure" of a table, and photos. */
async function fieldsOf(page: Page): Promise<readonly Field[]> {
  const inputs = await page.locator('form#walk input:not([type=hidden], [type=file], [type=checkbox])').evaluateAll((elements) => (
    elements.filter((element) => element instanceof HTMLInputElement).map(({ name, type }) => [name, type] as const)
  ));
  return [...new Map(inputs)].map(([name, kind]) => ({ name, kind }));
}

/** What belongs into a field: of an answer, of a part of it, of its minutes or seconds, or of ten. */
function wantedIn(name: string, answers: Answers): string | undefined {
  const [question = '', part = ''] = name.split('.');
  const said = answers[question];
  if (said === undefined || part === '') return typeof said === 'object' ? undefined : said?.toString();
  const [id = '', unit] = part.split(/-(min|s)$/);
  const value = typeof said === 'object' ? (said[part] ?? said[id]) : undefined;
  if (typeof value !== 'number') return value;
  if (unit === 'min') return String(Math.floor(value / 60));
  if (unit === 's') return String(value % 60);
  return String(id.endsWith('Share') ? Number((value * 10).toFixed(6)) : value);
}
