import { expect, type Browser, type Page } from '@playwright/test';
import type { Role } from '@/lib/access/roles';
import { SIGN_INS, stateOf } from './sign-ins';

/** A page of somebody of the school, in a browser of their own. */
export async function pageOf(browser: Browser, who: Role, viewport?: { readonly width: number; readonly height: number }): Promise<Page> {
  const context = await browser.newContext({ storageState: stateOf(who), ...(viewport === undefined ? {} : { viewport }) });
  return context.newPage();
}

/** Begins a draft from a document, and returns the address of its overview. */
export async function beginFromFile(page: Page, file: string, place: string): Promise<string> {
  await page.goto('/assessments/import');
  await page.getByLabel('File', { exact: true }).setInputFiles(file);
  await page.getByRole('radio', { name: place, exact: true }).check();
  await page.getByRole('checkbox', { name: 'Take the answers and leave the rest' }).check();
  await page.getByRole('button', { name: 'Begin from this file' }).click();
  await page.waitForURL(/\/assessments\/[0-9a-f-]{36}$/);
  return new URL(page.url()).pathname;
}

/** Answers one question of a page of the walk, and saves. */
export async function answer(page: Page, overview: string, pageId: string, option: string | RegExp): Promise<void> {
  await page.goto(`${overview}/walk/${pageId}`);
  await page.getByRole('radio', { name: option }).check();
  await page.getByRole('button', { name: 'Save and go on' }).click();
  await page.waitForURL(/saved/);
}

/** Reads the paper and signs it as the one who prepared it. */
export async function handOver(page: Page, overview: string): Promise<void> {
  const sign = async () => {
    await page.getByLabel('Your password').fill(SIGN_INS.organiser.password);
    await page.getByRole('button', { name: 'Sign and hand over' }).click();
  };
  await page.goto(`${overview}/hand-over`);
  await sign();
  await untilSigned(page, overview, sign);
}

/**
 * Waits until a paper that was just signed is kept. It names the packs and incidents of the school, which other tests
 * change at the same time: then it is refused, drawn anew, and signed once more, as a person would.
 */
export async function untilSigned(page: Page, overview: string, again: () => Promise<void>): Promise<void> {
  const changed = page.getByText('has changed since you opened this page');
  await expect(async () => {
    if (page.url().endsWith('/hand-over') || page.url().includes('/hand-over#')) {
      if (await changed.isVisible()) await again();
    }
    await expect(page).toHaveURL(`${overview}/result`, { timeout: 5000 });
  }).toPass({ timeout: 90_000 });
}

/** Signs the waiting paper as the officer. */
export async function signOff(page: Page, overview: string): Promise<void> {
  await page.goto(`${overview}/sign`);
  await page.getByRole('checkbox', { name: /^I have read paper SB-/ }).check();
  await page.getByLabel('Your password').fill(SIGN_INS['safety-officer'].password);
  await page.getByRole('button', { name: 'Sign it' }).click();
  await expect(page).toHaveURL(`${overview}/result`, { timeout: 90_000 });
}

/** Hands a file to the public page, as somebody without an account, and returns its verdict. */
export async function verdictOn(page: Page, name: string, bytes: Uint8Array): Promise<string> {
  await page.goto('/verify');
  await page.getByLabel('PDF of the paper').setInputFiles({ name, mimeType: 'application/pdf', buffer: Buffer.from(bytes) });
  await page.getByRole('button', { name: 'Check this file' }).click();
  await expect(page.getByText(`${name}, checked`)).toBeVisible();
  return page.locator('.file-verdict h2').innerText();
}
