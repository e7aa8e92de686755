import { expect, type Page } from '@playwright/test';
import { addPlace } from './place-pages';

/** Describes a place with a charging room, as the organiser would. */
export async function addPlaceWithRoom(page: Page, name: string): Promise<void> {
  await addPlace(page, name);
  await page.getByRole('link', { name: 'Add an area' }).click();
  await page.getByRole('link', { name: 'Charging' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Charging room');
  await page.getByRole('radio', { name: 'No, in a room' }).check();
  await page.getByLabel('Length').fill('9');
  await page.getByLabel('Width', { exact: true }).fill('6.5');
  await page.getByLabel('Height', { exact: true }).fill('3');
  await page.getByRole('button', { name: 'Add the area' }).click();
  await expect(page.getByRole('region', { name: 'Charging room', exact: true })).toBeVisible();
}

/** Begins an assessment of a place, confirms what is known of it, and returns the address of its overview. */
export async function beginAssessment(page: Page, place: string, title: string): Promise<string> {
  await page.goto('/assessments/new');
  const form = page.locator('#begin');
  await form.getByRole('radio', { name: place, exact: true }).check();
  await form.getByLabel('Title').fill(title);
  await form.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'This is known already. Is it still right?' })).toBeVisible();
  const overview = page.url().replace(/\/known$/, '');
  await page.getByRole('button', { name: 'Save and go on' }).click();
  await expect(page).toHaveURL(/\/walk\/first-place$/);
  return overview;
}

/** The button at the foot of a page; the return key presses a hidden one of the same name. */
export const saveAndGoOn = (page: Page) => page.getByRole('button', { name: 'Save and go on' });
