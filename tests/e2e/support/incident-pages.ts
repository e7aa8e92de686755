import { expect, type Page } from '@playwright/test';

/** What a form needs at least: nobody called, nobody hurt, a puffed-up pack somewhere. */
export async function fillIncident(page: Page, place: string): Promise<void> {
  await page.getByRole('checkbox', { name: 'Nobody was needed', exact: true }).check();
  await page.getByRole('group', { name: 'Was anybody hurt?' }).getByRole('radio', { name: 'No', exact: true }).check();
  await page.getByRole('group', { name: 'Did anybody breathe smoke?' }).getByRole('radio', { name: 'No', exact: true }).check();
  await page.getByRole('checkbox', { name: /^A pack puffed up/ }).check();
  await page.getByLabel('Where', { exact: true }).selectOption('elsewhere');
  await page.getByLabel('More about the place').fill(place);
  await page.getByLabel('What was going on?').selectOption('charging');
}

/** Records an incident and stays on its page. */
export async function recordIncident(page: Page, place: string): Promise<void> {
  await page.goto('/incidents/new');
  await fillIncident(page, place);
  await page.getByRole('button', { name: /^Save/ }).click();
  await expect(page.getByRole('heading', { name: /^Saved as incident/ })).toBeVisible();
}
