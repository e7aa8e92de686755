import { expect, type Page } from '@playwright/test';

/** Waits until everything is worked out: closed values, draws, and every budget of the slider. */
export async function scored(page: Page): Promise<void> {
  await expect(page.locator('[data-stage="scored"]')).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('Other amounts are being searched.')).toBeHidden({ timeout: 30_000 });
}

export async function openExample(page: Page, example: string): Promise<void> {
  await page.goto(`/try?example=${example}`);
  await scored(page);
}
