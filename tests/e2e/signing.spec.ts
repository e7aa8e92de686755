import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, type Page } from '@playwright/test';
import { addPlaceWithRoom } from './support/assessment-pages';
import { inProject } from './support/score-command';
import { SIGN_INS } from './support/sign-ins';
import { answer, beginFromFile, handOver, pageOf, signOff, untilSigned, verdictOn } from './support/signing-pages';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, faultsOf, watch } from './support/watched-page';

const PHONE = { width: 360, height: 740 };
const { organiser, 'safety-officer': officer } = SIGN_INS;

// One assessment on its way from a draft to the version after it: each step needs the one before.
test.describe.configure({ mode: 'serial' });
test.slow();

let overview = '';
let signedFile: Uint8Array = new Uint8Array();
let number = '';

async function fileOf(page: Page): Promise<Uint8Array> {
  const answered = await page.request.get(`${overview}/paper.pdf`);
  expect(answered.headers()['content-type']).toBe('application/pdf');
  return new Uint8Array(await answered.body());
}

/** Titles come with the page, not before it: what stands there until then is nobody's page. */
async function accessibleAs(page: Page, title: string): Promise<void> {
  await expect(page).toHaveTitle(new RegExp(title));
  await expectAccessible(page);
}

test('the result of a draft says who does what next, and an action is made of a stop condition', async ({ browser }) => {
  const page = await pageOf(browser, 'organiser', PHONE);
  const watched = watch(page);
  await addPlaceWithRoom(page, 'Signing house');
  overview = await beginFromFile(page, inProject('public/examples/ordinary-classroom.json'), 'Signing house');
  await page.goto(`${overview}/result`);
  await expect(page.getByRole('heading', { level: 1, name: 'Do not start. Two conditions stop it.' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'A draft' })).toBeVisible();
  await accessibleAs(page, 'Result');
  await expectNoSidewaysScroll(page);
  await page.getByRole('link', { name: /^Make it an action\s?: Head or owner/ }).click();
  await accessibleAs(page, 'Make an action');
  await page.getByLabel('By', { exact: true }).fill('');
  await page.getByRole('button', { name: 'Add the action' }).click();
  await expect(faultsOf(page)).toContainText('Choose the day');
  await page.getByLabel('By', { exact: true }).fill('2020-01-31');
  await page.getByRole('button', { name: 'Add the action' }).click();
  await expect(page).toHaveURL(`${overview}/result#actions`);
  await expect(page.locator('#actions')).toContainText('overdue');
  await page.locator('#actions').getByRole('link', { name: 'Ask for leave in writing.' }).click();
  await accessibleAs(page, 'Action');
  await page.getByLabel('What was done').fill('Letter of the head, 20 November, in the folder');
  await page.getByRole('button', { name: 'It is done' }).click();
  await expect(page.getByText('Letter of the head, 20 November, in the folder')).toBeVisible();
  await page.goto(`${overview}/result`);
  await page.locator('#ranking').getByRole('link').first().click();
  await expect(page.getByRole('heading', { name: 'What leads to it, what follows' })).toBeVisible();
  await accessibleAs(page, 'Risk');
  await expectNoSidewaysScroll(page);
  expectQuiet(page, watched);
  await page.context().close();
});

test('it is read and handed over by keyboard alone, and a wrong password signs nothing', async ({ browser }) => {
  const page = await pageOf(browser, 'organiser');
  await page.goto(`${overview}/hand-over`);
  await expect(page.getByRole('region', { name: 'The paper as you would sign it' })).toContainText('Risks that remain');
  await accessibleAs(page, 'Hand over');
  await page.getByRole('link', { name: 'To the signature' }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await expect(page.getByLabel('Your password')).toBeFocused();
  await page.keyboard.type('not my password at all');
  await page.keyboard.press('Enter');
  await expect(faultsOf(page)).toBeFocused();
  await expect(page.getByLabel('Your password')).toHaveValue('');
  await page.getByLabel('Your password').focus();
  await page.keyboard.type(organiser.password);
  await expect(page.getByLabel('Your password')).toHaveValue(organiser.password);
  await page.keyboard.press('Enter');
  await untilSigned(page, overview, async () => {
    await page.getByLabel('Your password').focus();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type(organiser.password);
    await page.keyboard.press('Enter');
  });
  await expect(page.getByRole('heading', { name: `With ${officer.name}` })).toBeVisible();
  await page.goto(`${overview}/paper`);
  await expect(page.getByRole('region', { name: 'The paper', exact: true })).toContainText(/SB-[0-9A-Z]{4}-[0-9A-Z]{4}/);
  await accessibleAs(page, 'The paper');
  await page.context().close();
});

test('the officer asks about an answer and returns it; the preparer answers, changes it and hands it over again', async ({ browser }) => {
  const page = await pageOf(browser, 'safety-officer', PHONE);
  await page.goto(`${overview}/sign`);
  await expect(page.getByLabel('Your password')).toHaveCount(0);
  await page.goto(`${overview}/review`);
  await accessibleAs(page, 'Answers and comments');
  await expectNoSidewaysScroll(page);
  const asked = page.locator('#answer-team-consent');
  await asked.getByText('Comment:').click();
  await asked.getByLabel('Comment').fill('Please ask the head first.');
  await asked.getByRole('button', { name: 'Write it' }).click();
  await expect(asked.getByText('Please ask the head first.').first()).toBeVisible();
  await page.getByRole('button', { name: `Return it to ${organiser.name}` }).click();
  await expect(faultsOf(page)).toContainText('what is to be changed');
  await page.getByLabel('Return it with this').fill('Leave of the head is missing.');
  await page.getByRole('button', { name: `Return it to ${organiser.name}` }).click();
  await expect(page.getByRole('heading', { name: 'Returned with comments' })).toBeVisible();
  await page.context().close();

  const teacher = await pageOf(browser, 'organiser');
  await teacher.goto(`${overview}/review?show=commented`);
  const thread = teacher.locator('#answer-team-consent');
  await thread.getByText('Reply:').click();
  await thread.getByLabel('Reply').fill('Asked, and agreed.');
  await thread.getByRole('button', { name: 'Write it' }).click();
  await expect(thread.getByText('Asked, and agreed.').first()).toBeVisible();
  await answer(teacher, overview, 'team-leave', 'Both');
  await handOver(teacher, overview);
  await teacher.context().close();
});

test('an accepted stop condition changes the paper: both sign it as it is then, and nobody signs twice', async ({ browser }) => {
  const checking = await pageOf(browser, 'safety-officer');
  await checking.goto(`${overview}/review`);
  const stop = checking.locator('#accept-no-outdoor-spot');
  await stop.getByText('Accept in writing: No place outdoors').click();
  await stop.getByLabel('Why it can be accepted').fill('The yard is being paved until the end of the month.');
  await stop.getByLabel('What is done instead').fill('A suspect pack is left where it is, the room is emptied and locked.');
  await stop.getByRole('button', { name: 'Accept it' }).click();
  await expect(checking.getByRole('heading', { name: 'The paper has changed' })).toBeVisible();
  await checking.goto(`${overview}/sign`);
  await expect(checking.getByLabel('Your password')).toHaveCount(0);

  const teacher = await pageOf(browser, 'organiser');
  await handOver(teacher, overview);
  await teacher.goto(`${overview}/sign`);
  await expect(teacher.getByRole('heading', { level: 1 })).toHaveText('Your role does not go so far');
  await checking.goto(`${overview}/sign`);
  await accessibleAs(checking, 'Sign');
  await expect(checking.getByRole('region', { name: 'The paper as you would sign it' })).toContainText('Accepted by Rowan Oake until');
  await signOff(checking, overview);
  await expect(checking.getByRole('heading', { name: /^In force until/ })).toBeVisible();
  await accessibleAs(checking, 'Result');
  signedFile = await fileOf(checking);
  number = /SB-[0-9A-Z]{4}-[0-9A-Z]{4}/.exec(await checking.locator('#papers').innerText())?.[0] ?? '';
  await teacher.context().close();
  await checking.context().close();
});

test('two programs that are not ours find both signatures in the file, and the certificate is there for everybody', { tag: '@same-on-both' }, async ({ browser, request }) => {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-signed-'));
  try {
    const file = path.join(folder, 'paper.pdf');
    writeFileSync(file, signedFile);
    const { stdout } = spawnSync('pdfsig', ['-nocert', file], { encoding: 'utf8' });
    expect(stdout.match(/Signature Validation: Signature is Valid\./g)).toHaveLength(2);
    expect(stdout).toContain(organiser.name);
    expect(stdout).toContain(officer.name);
    expect(stdout).toContain('Total document signed');
    expect(spawnSync('qpdf', ['--check', file], { encoding: 'utf8' }).status).toBe(0);
    const page = await pageOf(browser, 'helper');
    await page.goto('/school');
    const address = await page.getByRole('link', { name: 'Save as PEM' }).getAttribute('href');
    const pem = await request.get(address ?? '');
    writeFileSync(path.join(folder, 'school.pem'), await pem.body());
    expect(spawnSync('openssl', ['x509', '-in', path.join(folder, 'school.pem'), '-noout', '-subject'], { encoding: 'utf8' }).stdout).toContain('Tern Lane School');
    await page.context().close();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('anybody checks the file, and looks its number up', async ({ page }) => {
  await page.setViewportSize(PHONE);
  expect(await verdictOn(page, 'paper.pdf', signedFile)).toBe('Unchanged and in force');
  await expect(page.locator('.file-verdict h2')).toBeFocused();
  await expect(page.locator('.file-verdict')).toHaveClass(/good/);
  await expect(page.locator('.file-verdict')).toContainText(number);
  await accessibleAs(page, 'Check a paper');
  await expectNoSidewaysScroll(page);
  await page.getByLabel('Number of the paper').fill(number.toLowerCase());
  await page.getByRole('button', { name: 'Look it up' }).click();
  await expect(page.locator('.file-verdict h2')).toHaveText('The paper of this number is in force');
  await page.goto('/verify?number=SB-0000-0000');
  await expect(page.locator('.file-verdict h2')).toHaveText('No paper of this number');
  await accessibleAs(page, 'Check a paper');
});

test('a suspension is seen at once, on the result and by whoever checks the file, and can be lifted', async ({ browser, page }) => {
  const checking = await pageOf(browser, 'safety-officer', PHONE);
  await checking.goto(`${overview}/suspend`);
  await accessibleAs(checking, 'Suspend an assessment');
  await checking.getByRole('button', { name: 'Suspend it now' }).click();
  await expect(faultsOf(checking)).toContainText('Write why');
  await checking.getByLabel('Reason').fill('Smoke in the store on Friday.');
  await checking.getByRole('button', { name: 'Suspend it now' }).click();
  await expect(checking.getByRole('heading', { name: /^Suspended since/ })).toBeVisible();
  expect(await verdictOn(page, 'paper.pdf', signedFile)).toContain('Unchanged, but suspended since');
  await expect(page.locator('.file-verdict')).toContainText('Smoke in the store on Friday.');
  await expect(page.locator('.file-verdict')).toHaveClass(/stop/);
  await checking.goto(`${overview}/suspend`);
  await checking.getByLabel('What has changed').fill('The pack was given away, the store was looked at.');
  await checking.getByRole('button', { name: 'Put it in force again' }).click();
  await expect(checking.getByRole('heading', { name: /^In force until/ })).toBeVisible();
  expect(await verdictOn(page, 'paper.pdf', signedFile)).toBe('Unchanged and in force');
  await checking.context().close();
});

test('the next version is a copy; once it is signed the one before is no longer in force, by its file too', async ({ browser, page }) => {
  const before = overview;
  const teacher = await pageOf(browser, 'organiser');
  await teacher.goto('/assessments/new');
  // Other tests sign assessments of their own meanwhile.
  await teacher.locator(`#next input[value="${before.split('/').at(-1) ?? ''}"]`).check();
  await teacher.getByRole('button', { name: 'Begin the next version' }).click();
  await teacher.waitForURL(/\/assessments\/[0-9a-f-]{36}$/);
  overview = new URL(teacher.url()).pathname;
  expect(overview).not.toBe(before);
  await answer(teacher, overview, 'first-damaged', /^Yes, outdoors, named and known/);
  await handOver(teacher, overview);
  const checking = await pageOf(browser, 'safety-officer');
  await checking.goto(`${overview}/review?show=changed`);
  await expect(checking.getByText('Before: No', { exact: true })).toBeVisible();
  await signOff(checking, overview);
  await checking.goto(`${before}/result`);
  await expect(checking.getByRole('heading', { name: 'No longer in force: version 2 took its place' })).toBeVisible();
  expect(await verdictOn(page, 'paper.pdf', signedFile)).toBe('Unchanged, no longer in force');
  await expect(page.locator('.file-verdict')).toHaveClass(/stop/);
  await teacher.context().close();
  await checking.context().close();
});

test('the files and papers of a school are not to be had from outside', async ({ browser, request }) => {
  expect((await request.get(`${overview}/paper.pdf`, { maxRedirects: 0 })).status()).not.toBe(200);
  const stranger = await browser.newContext({ storageState: path.join('test-results', 'sign-ins', 'other-school.json') });
  for (const page of ['result', 'review', 'paper', 'paper.pdf']) expect((await stranger.request.get(`${overview}/${page}`)).status()).toBe(404);
  await stranger.close();
});
