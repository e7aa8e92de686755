import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { scored } from './support/room-page';
import { faultsByCommand, inProject } from './support/score-command';
import { watch } from './support/watched-page';

const folder = inProject('tests/reference-data/faulty');
const faulty = readdirSync(folder).filter((name) => name.endsWith('.json'));

test('there are twenty-six faulty documents', () => { expect(faulty).toHaveLength(26); });

for (const name of faulty) {
  test(`${name}: every fault stands on the page in words, and nothing is lost`, async ({ page }) => {
    const file = `${folder}/${name}`;
    const lines = await faultsByCommand(file);
    expect(lines.length).toBeGreaterThan(0);
    await page.goto('/try');
    await page.locator('input[type="file"]').setInputFiles(file);
    const summary = page.getByRole('alert').filter({ hasText: 'nothing is worked out' });
    await expect(summary).toBeFocused();
    await expect(summary.getByRole('listitem')).toHaveText(lines);
    await expect(page.getByRole('textbox', { name: 'Or paste its text' })).toHaveValue(readFileSync(file, 'utf8'));
    await expect(page.locator('[data-stage]')).toHaveCount(0);
  });
}

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
