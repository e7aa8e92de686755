import { expect, type Page } from '@playwright/test';
import { fillIncident } from '../incident-pages';
import { expectGoodScreen } from './good-screen';

/** Records an incident in a room that names a pack, says where the pack is, and returns the incident's address. */
export async function recordWithPack(page: Page, place: string, label: string): Promise<string> {
  await page.goto('/incidents/new');
  await fillIncident(page, 'by the east window');
  const where = page.getByLabel('Where', { exact: true });
  const room = where.getByRole('option').filter({ hasText: place }).filter({ hasText: 'Charging room' });
  await where.selectOption(String(await room.getAttribute('value')));
  await page.getByLabel('Packs that took part').first().fill(label);
  await expectGoodScreen(page);
  await page.getByRole('button', { name: `Save. Mark ${label} isolated` }).click();
  await expect(page.getByText(`Marked isolated in the register: ${label}.`)).toBeVisible();
  await expectGoodScreen(page);
  await page.getByRole('group', { name: `${label} is` }).getByRole('radio', { name: 'Outdoor spot' }).check();
  await page.getByRole('button', { name: `Keep where ${label} is` }).click();
  await expect(page.getByRole('button', { name: `Keep where ${label} is` })).toHaveCount(0);
  const address = new URL(page.url()).pathname;
  await page.goto(`/packs?find=${label}`);
  await expect(page.getByRole('row', { name: label })).toContainText('isolated');
  await expectGoodScreen(page);
  return address;
}

/** The officer finds the cause, says what is to be done, and closes it. */
export async function closeIncident(officer: Page, address: string): Promise<void> {
  await officer.goto(address);
  await officer.getByRole('combobox', { name: 'Add', exact: true }).selectOption('cause');
  await officer.getByLabel('In words').fill('charged at twice the rate');
  await officer.getByRole('button', { name: 'Add it' }).click();
  await expect(officer.getByText('Cause: charged at twice the rate')).toBeVisible();
  await officer.getByLabel('Which risk of the assessment was it?').selectOption({ index: 1 });
  await officer.getByRole('button', { name: 'Keep the risk' }).click();
  await expect(officer.getByText(/^Risk it belongs to: ./)).toBeVisible();
  await officer.getByLabel('What is to be done').fill('Set 1C on every charger');
  await officer.getByLabel('Who does it').fill('K. M.');
  await officer.getByLabel('By when').fill('2027-01-10');
  await officer.getByRole('button', { name: 'Add the action' }).click();
  await expect(officer.getByRole('heading', { name: 'Nothing is left open.' })).toBeVisible();
  await expectGoodScreen(officer);
  await officer.getByLabel('What was learned').fill('the limit stands on the charger now');
  await officer.getByRole('button', { name: /^Close incident/ }).click();
  await expect(officer.getByText(/State: closed/)).toBeVisible();
  await expectGoodScreen(officer);
}
