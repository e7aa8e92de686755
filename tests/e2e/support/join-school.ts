import { expect, type Browser, type BrowserContext, type Page } from '@playwright/test';
import type { Role } from '@/lib/access/roles';
import { stateOf, type SignIn } from './sign-ins';

/** Makes a link as the school's officer and returns it. */
export async function invite(officer: Page, forWhom: string, role: Role): Promise<string> {
  await officer.goto('/people');
  await officer.getByLabel('Who is it for?').fill(forWhom);
  await officer.locator(`input[name=role][value=${role}]`).check();
  await officer.getByRole('button', { name: 'Make a link' }).click();
  return officer.getByLabel(`Link for ${forWhom}`).inputValue();
}

/** Uses a link, and returns the browser in which its person is signed in. */
export async function join(browser: Browser, link: string, { name, email, password }: SignIn): Promise<BrowserContext> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(link);
  await page.getByLabel('Your name').fill(name);
  await page.getByLabel('Your post').fill('Teacher');
  await page.getByLabel('Your e-mail').fill(email);
  await page.getByLabel('A password').fill(password);
  await page.getByRole('button', { name: 'Make the account' }).click();
  await expect(page).toHaveURL('/today');
  return context;
}

/** A page of the school's officer, beside the page of the test. */
export async function officerPage(browser: Browser): Promise<Page> {
  const context = await browser.newContext({ storageState: stateOf('safety-officer') });
  return context.newPage();
}
