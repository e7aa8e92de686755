import { readdirSync, readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import { scored } from './support/room-page';
import { faultsByCommand, faultsOfAll, inProject } from './support/score-command';
import { test } from './support/test';
import { watch } from './support/watched-page';

const folder = inProject('tests/reference-data/faulty');
const faulty = readdirSync(folder).filter((name) => name.endsWith('.json'));

test('there are twenty-six faulty documents', () => { expect(faulty).toHaveLength(26); });

/** What stands on the page after a faulty document was given to it. */
async function expectFaults(page: Page, file: string, lines: readonly string[]): Promise<void> {
  await page.locator('input[type="file"]').setInputFiles(file);
  expect(lines.length).toBeGreaterThan(0);
  const summary = page.getByRole('alert').filter({ hasText: 'nothing is worked out' });
  await expect(summary.getByRole('listitem')).toHaveText(lines);
  await expect(summary).toBeFocused();
  await expect(page.getByRole('textbox', { name: 'Or paste its text' })).toHaveValue(readFileSync(file, 'utf8'));
  await expect(page.locator('[data-stage]')).toHaveCount(0);
}

// One after the other in the same page, so that each also has to take the faults of the one before away.
test('every fault of a faulty document stands on the page in words, and nothing is lost', async ({ page }) => {
  test.slow();
  await page.goto('/try');
  const files = faulty.map((name) => `${folder}/${name}`);
  const faults = await faultsOfAll(files);
  for (const file of files) await test.step(file, () => expectFaults(page, file, faults[file] ?? []));
});

test('the page and the command name the same faults', async ({ page }) => {
  await page.goto('/try');
  for (const name of ['05-name-twice.json', '19-strangers.json']) await expectFaults(page, `${folder}/${name}`, await faultsByCommand(`${folder}/${name}`));
});

test('a faulty text can be put right where it was pasted', async ({ page }) => {
  await page.goto('/try');
  const box = page.getByRole('textbox', { name: 'Or paste its text' });
  await box.fill('{"format": "sandbucket-assessment.v1", "id": "mine", "title": "Mine", "answers": {"team-officer": "perhaps"}}');
  await page.getByRole('button', { name: 'Read it' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'One thing is wrong' })).toContainText('$.answers["team-officer"]');
  await box.fill('{"format": "sandbucket-assessment.v1", "id": "mine", "title": "Mine", "answers": {"team-officer": "yes"}}');
  await page.getByRole('button', { name: 'Read it' }).click();
  await scored(page);
  await expect(page.getByText('from pasted text')).toBeVisible();
});

test('an uploaded document leaves the browser in no request, and comes out of the download whole', async ({ page }) => {
  await page.goto('/try');
  await page.waitForLoadState('networkidle');
  const watched = watch(page);
  const file = inProject('tests/reference-data/everything.json');
  const given: unknown = JSON.parse(readFileSync(file, 'utf8'));
  const text = JSON.stringify({ format: 'sandbucket-assessment.v1', ...(given as object) });
  await page.locator('input[type="file"]').setInputFiles({ name: 'everything.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await scored(page);
  for (const request of watched.requests) {
    expect(request.method()).toBe('GET');
    expect(request.postData()).toBeNull();
    expect(new URL(request.url()).pathname).toMatch(/^\/(_next\/static|img)\//);
    expect(new URL(request.url()).search).toBe('');
  }
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Download the document' }).click()]);
  expect(JSON.parse(readFileSync(await download.path(), 'utf8'))).toEqual(JSON.parse(text));
});
