import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, type Page } from '@playwright/test';
import { SIGN_INS } from '../sign-ins';
import { expectGoodScreen } from './good-screen';

/** The officer asks about one answer and returns the assessment. */
export async function returnWithComment(officer: Page, overview: string, question: string, comment: string): Promise<void> {
  await officer.goto(`${overview}/review`);
  const asked = officer.locator(`#answer-${question}`);
  await asked.getByText('Comment:').click();
  await asked.getByLabel('Comment').fill(comment);
  await asked.getByRole('button', { name: 'Write it' }).click();
  await expect(asked.getByText(comment).first()).toBeVisible();
  await expectGoodScreen(officer);
  await officer.getByLabel('Return it with this').fill('One answer has to be found out.');
  await officer.getByRole('button', { name: `Return it to ${SIGN_INS.organiser.name}` }).click();
  await expect(officer.getByRole('heading', { name: 'Returned with comments' })).toBeVisible();
  await expectGoodScreen(officer);
}

/** The paper as it is kept, over the link beside its number. */
export async function downloadPaper(page: Page, overview: string): Promise<Uint8Array> {
  await page.goto(`${overview}/result`);
  const row = page.locator('#papers li').filter({ hasText: 'signed by both' });
  const kept = await page.request.get(String(await row.getByRole('link').first().getAttribute('href')));
  expect(kept.headers()['content-type']).toBe('application/pdf');
  return new Uint8Array(await kept.body());
}

/** What pdfsig says of a file; undefined, with the reason printed, when it is not installed. */
export function pdfsigOf(bytes: Uint8Array): string | undefined {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-path-'));
  try {
    const file = path.join(folder, 'paper.pdf');
    writeFileSync(file, bytes);
    const { stdout, error } = spawnSync('pdfsig', ['-nocert', file], { encoding: 'utf8' });
    if (error === undefined) return stdout;
    console.warn(`The signatures were not checked by pdfsig, which does not run here: ${error.message}`);
    return undefined;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
