import { expect, type Page } from '@playwright/test';

/** Describes a place of the school, as the organiser would. */
export async function addPlace(page: Page, name: string): Promise<void> {
  await page.goto('/places/new');
  await page.getByLabel('Name', { exact: true }).fill(name);
  await page.getByRole('radio', { name: /^Our own school/ }).check();
  await page.getByLabel('Address for the fire service').fill('1 Tern Lane, gate B');
  await page.getByRole('button', { name: 'Add the place' }).click();
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
}
