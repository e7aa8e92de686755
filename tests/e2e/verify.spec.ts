import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, type Page } from '@playwright/test';
import { addPlaceWithRoom } from './support/assessment-pages';
import { recordIncident } from './support/incident-pages';
import { inProject } from './support/score-command';
import { SIGN_INS } from './support/sign-ins';
import { beginFromFile, handOver, pageOf, signOff, verdictOn } from './support/signing-pages';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, expectReadableInDark, faultsOf, watch } from './support/watched-page';

const PHONE = { width: 360, height: 740 };
const { 'safety-officer': officer } = SIGN_INS;

test.describe.configure({ mode: 'serial' });
test.slow();

async function pdfOf(page: Page, address: string): Promise<Uint8Array> {
  const answered = await page.request.get(address);
  expect(answered.headers()['content-type']).toBe('application/pdf');
  return new Uint8Array(await answered.body());
}

/** Signed just so, by two people of a school that has never been here. */
function foreignFile(): Uint8Array {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-foreign-'));
  try {
    const file = path.join(folder, 'foreign.pdf');
    const script = `import { writeFileSync } from 'node:fs'; import { signedSample } from './tests/support/pdf/signed-sample.ts';
      const write = async () => writeFileSync(${JSON.stringify(file)}, (await signedSample()).signed); void write();`;
    const { status, stderr } = spawnSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', script], { cwd: inProject('.'), encoding: 'utf8' });
    expect(status, stderr).toBe(0);
    return new Uint8Array(readFileSync(file));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A file with one bit of one byte changed. */
function changedAt(file: Uint8Array, at: number): Uint8Array {
  const changed = Uint8Array.from(file);
  changed[at] = (changed[at] ?? 0) ^ 1;
  return changed;
}

const looks = async (page: Page): Promise<string> => (await page.locator('.file-verdict').getAttribute('class')) ?? '';

let overview = '';
let paper: Uint8Array = new Uint8Array();

test('an unchanged file in force looks like no other: changed, longer, foreign, cut off, or no PDF at all', async ({ browser, page }) => {
  const teacher = await pageOf(browser, 'organiser');
  await addPlaceWithRoom(teacher, 'Verify house');
  overview = await beginFromFile(teacher, inProject('public/examples/good-hall.json'), 'Verify house');
  await handOver(teacher, overview);
  const checking = await pageOf(browser, 'safety-officer');
  await signOff(checking, overview);
  paper = await pdfOf(checking, `${overview}/paper.pdf`);
  await page.setViewportSize(PHONE);
  expect(await verdictOn(page, 'paper.pdf', paper)).toBe('Unchanged and in force');
  expect(await looks(page)).toContain('good');
  await expectAccessible(page);
  await expectReadableInDark(page);
  const said = new Set<string>();
  const cases: readonly (readonly [string, Uint8Array, string])[] = [
    ['changed.pdf', changedAt(paper, Buffer.from(paper).indexOf('stream') + 20), 'Changed'],
    ['longer.pdf', Buffer.concat([paper, Buffer.from('\n% more\n')]), 'Changed'],
    ['foreign.pdf', foreignFile(), 'Not signed by this school'],
    ['cut.pdf', paper.slice(0, paper.length - 300), 'Cut off'],
    ['letter.pdf', Buffer.from('Dear head, all is well.'), 'Not a PDF'],
  ];
  for (const [name, bytes, heading] of cases) {
    expect(await verdictOn(page, name, bytes), name).toBe(heading);
    expect(await looks(page), name).toContain('stop');
    said.add(await page.locator('.file-verdict > p:not(.small)').allInnerTexts().then((texts) => texts.join(' ')));
  }
  expect(said.size).toBe(cases.length);
  await expectNoSidewaysScroll(page);
  await teacher.context().close();
  await checking.context().close();
});

test('a suspended file is unchanged and stops all the same', async ({ browser, page }) => {
  const checking = await pageOf(browser, 'safety-officer');
  await checking.goto(`${overview}/suspend`);
  await checking.getByLabel('Reason').fill('Smoke in the store on Friday.');
  await checking.getByRole('button', { name: 'Suspend it now' }).click();
  await expect(checking.getByRole('heading', { name: /^Suspended since/ })).toBeVisible();
  expect(await verdictOn(page, 'paper.pdf', paper)).toMatch(/^Unchanged, but suspended since/);
  expect(await looks(page)).toContain('stop');
  await checking.context().close();
});

async function closeIt(page: Page): Promise<void> {
  await page.getByLabel('What was learned').fill('looked at before each session now');
  await page.getByRole('button', { name: /^Close incident/ }).click();
  await expect(page.getByText(/State: closed/)).toBeVisible();
}

async function signIt(page: Page, incident: string): Promise<Uint8Array> {
  await page.goto(`${incident}/sign`);
  await page.getByRole('checkbox', { name: /^I have read the paper of incident/ }).check();
  await page.getByLabel('Your password').fill(officer.password);
  await page.getByRole('button', { name: 'Sign it' }).click();
  await expect(page).toHaveURL(`${incident}/paper`, { timeout: 60_000 });
  return pdfOf(page, `${incident}/paper.pdf`);
}

test('the paper of a closed incident is signed by the officer alone, and one that was replaced is no longer in force', async ({ browser, page }) => {
  const checking = await pageOf(browser, 'safety-officer', PHONE);
  const watched = watch(checking);
  await recordIncident(checking, 'behind the verify house');
  const incident = new URL(checking.url()).pathname;
  await checking.goto(`${incident}/sign`);
  await expect(checking.getByRole('heading', { name: 'It is not closed yet' })).toBeVisible();
  await checking.goto(incident);
  for (const [kind, words] of [['cause', 'dented in a match'], ['measure', 'every pack is looked at']] as const) {
    await checking.getByRole('combobox', { name: 'Add', exact: true }).selectOption(kind);
    await checking.getByLabel('In words').fill(words);
    await checking.getByRole('button', { name: 'Add it' }).click();
    await expect(checking.getByText(words)).toBeVisible();
  }
  await checking.getByLabel('Which risk of the assessment was it?').selectOption('none');
  await checking.getByRole('button', { name: 'Keep the risk' }).click();
  await expect(checking.getByText('Risk it belongs to: None')).toBeVisible();
  await closeIt(checking);
  await checking.goto(`${incident}/sign`);
  await expect(checking.getByRole('region', { name: 'The paper as you would sign it' })).toContainText('dented in a match');
  await expectAccessible(checking);
  await expectNoSidewaysScroll(checking);
  await checking.getByLabel('Your password').fill('not my password at all');
  await checking.getByRole('button', { name: 'Sign it' }).click();
  await expect(faultsOf(checking)).toContainText('Say that you have read');
  const first = await signIt(checking, incident);
  await expectAccessible(checking);
  expect(await verdictOn(page, 'incident.pdf', first)).toBe('Unchanged, and the record that counts');
  const helper = await pageOf(browser, 'helper');
  for (const way of ['sign', 'paper', 'paper.pdf']) expect([403, 404]).toContain((await helper.request.get(`${incident}/${way}`)).status());
  const stranger = await browser.newContext({ storageState: path.join('test-results', 'sign-ins', 'other-school.json') });
  for (const way of ['sign', 'paper', 'paper.pdf']) expect((await stranger.request.get(`${incident}/${way}`)).status()).toBe(404);
  await checking.goto(incident);
  await checking.getByLabel('Why it is opened again').fill('a second pack was there');
  await checking.getByRole('button', { name: 'Open it again' }).click();
  await expect(checking.getByText(/State: in review/)).toBeVisible();
  expect(await verdictOn(page, 'incident.pdf', first)).toMatch(/^Unchanged, review asked since/);
  await closeIt(checking);
  const second = await signIt(checking, incident);
  expect(await verdictOn(page, 'incident.pdf', first)).toBe('Unchanged, no longer in force');
  expect(await looks(page)).toContain('stop');
  expect(await verdictOn(page, 'incident.pdf', second)).toBe('Unchanged, and the record that counts');
  expectQuiet(checking, watched);
  for (const opened of [checking, helper]) await opened.context().close();
  await stranger.close();
});

test('without a script the page of a making looks again by itself, and a making can be given up', async ({ browser }) => {
  const teacher = await pageOf(browser, 'organiser');
  const plain = await browser.newContext({ storageState: await teacher.context().storageState(), javaScriptEnabled: false });
  await teacher.context().close();
  const page = await plain.newPage();
  const draft = await beginFromFile(page, inProject('public/examples/good-hall.json'), 'Verify house');
  await page.goto(`${draft}/hand-over`);
  // Other tests change the packs that stand on the paper: then it is refused, drawn anew, and signed once more.
  await expect(async () => {
    await page.getByLabel('Your password').fill(SIGN_INS.organiser.password);
    await page.getByRole('button', { name: 'Sign and hand over' }).click();
    await expect(page.getByRole('heading', { level: 1, name: 'The paper is being made' })).toBeVisible({ timeout: 3000 });
  }).toPass();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByRole('heading', { name: 'You cancelled it' })).toBeVisible();
  await page.goto(`${draft}/result`);
  await expect(page.getByRole('heading', { name: 'A draft' })).toBeVisible();
  await handOver(page, draft);
  await plain.close();
});
