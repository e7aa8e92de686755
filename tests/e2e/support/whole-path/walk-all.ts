import { expect, type Page } from '@playwright/test';
import { saveAndGoOn } from '../assessment-pages';
import { faultsOf } from '../watched-page';
import { answerPage, type Answers } from './answer-page';
import { expectGoodScreen } from './good-screen';

/** A walk has some 25 pages, and a page comes back for each question that an answer brought up. */
const MOST_PAGES = 80;

/** Answers page after page until the walk is over; returns the pages in the order they came. */
export async function walkAll(page: Page, answers: Answers): Promise<readonly string[]> {
  const pages: string[] = [];
  while (page.url().includes('/walk/')) {
    if (pages.length === MOST_PAGES) throw new Error(`The walk does not end: ${pages.join(', ')}`);
    const before = await whereIn(page);
    pages.push(before.pageId);
    await answerPage(page, answers);
    await expectGoodScreen(page);
    await saveAndGoOn(page).click();
    await expect.poll(async () => JSON.stringify(await whereIn(page)), { message: `${before.pageId} is saved` }).not.toBe(JSON.stringify(before));
    await expect(faultsOf(page)).toHaveCount(0);
  }
  return pages;
}

/** The page and what it asks; one that comes back asks more than before. */
async function whereIn(page: Page): Promise<{ readonly pageId: string; readonly asked: number; readonly faults: number }> {
  // In one look: a page that goes between two of them would be waited for.
  const pageId = await page.locator('form#walk input[name=pageId]').evaluateAll(([first]) => (first instanceof HTMLInputElement ? first.value : ''));
  return { pageId, asked: await page.locator('form#walk input[name=shown]').count(), faults: await faultsOf(page).count() };
}
