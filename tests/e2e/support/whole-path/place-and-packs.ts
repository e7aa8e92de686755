import { expect, type Page } from '@playwright/test';
import { addPlaceWithRoom } from '../assessment-pages';
import { addPack } from '../pack-pages';
import { expectGoodScreen } from './good-screen';

/** A place with a room to charge in and a spot outdoors, and two packs. */
export async function enterPlaceAndPacks(page: Page, place: string, packs: readonly string[]): Promise<void> {
  await addPlaceWithRoom(page, place);
  await page.getByRole('link', { name: 'Add an area' }).click();
  await page.getByRole('link', { name: 'Outdoor spot for suspect packs' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Metal box in the yard');
  await page.getByRole('radio', { name: 'Yes, outdoors' }).check();
  await page.getByLabel('To the nearest thing that could burn').fill('5');
  await expectGoodScreen(page);
  await page.getByRole('button', { name: 'Add the area' }).click();
  await expect(page.getByRole('region', { name: 'Metal box in the yard' })).toContainText('5 m');
  await expectGoodScreen(page);
  for (const label of packs) await addPack(page, label);
  await expectGoodScreen(page);
}
