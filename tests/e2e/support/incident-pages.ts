import { expect, type Page } from '@playwright/test';

/** Without any assessment. An incident of which nobody knows the place puts all signed papers of the school in doubt, those of other tests too. */
export const INCIDENT_PLACE = 'Incident house';

/** What a form needs at least: nobody called, nobody hurt, a puffed-up pack in a place without an assessment. */
export async function fillIncident(page: Page, place: string): Promise<void> {
  await page.getByRole('checkbox', { name: 'Nobody was needed', exact: true }).check();
  await page.getByRole('group', { name: 'Was anybody hurt?' }).getByRole('radio', { name: 'No', exact: true }).check();
  await page.getByRole('group', { name: 'Did anybody breathe smoke?' }).getByRole('radio', { name: 'No', exact: true }).check();
  await page.getByRole('checkbox', { name: /^A pack puffed up/ }).check();
  const where = page.getByLabel('Where', { exact: true });
  const site = where.locator('option[value^="site:"]').filter({ hasText: INCIDENT_PLACE });
  await where.selectOption(String(await site.getAttribute('value')));
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
