import type { Page } from '@playwright/test';

type Said = string | number | Readonly<Record<string, string | number>>;
/** Answers as a document has them: by question, of a table or of ticks by its parts. */
export type Answers = Readonly<Record<string, Said>>;

interface Field {
  readonly name: string;
  readonly kind: string;
  readonly values: readonly string[];
}

const NOT_SURE = 'not sure';

/** Answers every question the page shows, and says which of them the answers know nothing of. */
export async function answerPage(page: Page, answers: Answers): Promise<readonly string[]> {
  const strangers: string[] = [];
  for (const field of await fieldsOf(page)) {
    const wanted = wantedIn(field.name, answers);
    if (wanted === undefined) strangers.push(field.name);
    if (field.kind === 'radio') await page.locator(`input[name="${field.name}"][value="${wanted ?? NOT_SURE}"]`).check();
    else if (wanted !== undefined) await page.locator(`[name="${field.name}"]:not([type=checkbox])`).fill(wanted);
  }
  return strangers;
}

/** The fields of the answers, without those beside them: "not sure" of a table, notes, photos, and what may be left empty. */
async function fieldsOf(page: Page): Promise<readonly Field[]> {
  const inputs = await page.locator('form#walk input:not([type=hidden], [type=file], [type=checkbox])').evaluateAll((elements) => (
    elements.filter((element) => element instanceof HTMLInputElement).map(({ name, type, value }) => ({ name, type, value }))
  ));
  const names = [...new Set(inputs.map(({ name }) => name))].filter((name) => !/^(note|photo):/.test(name));
  return names.map((name) => {
    const own = inputs.filter((input) => input.name === name);
    return { name, kind: own[0]?.type ?? '', values: own.map(({ value }) => value) };
  });
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
