import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, type Page } from '@playwright/test';
import { EVENT_WORLD, makeEventWorld } from './support/event-world';
import { SIGN_INS } from './support/sign-ins';
import { pageOf } from './support/signing-pages';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, faultsOf, watch } from './support/watched-page';

const PHONE = { width: 360, height: 740 };
const { organiser, 'safety-officer': officer } = SIGN_INS;

// One event on its way from a draft to a file that was taken back: each step needs the one before.
test.describe.configure({ mode: 'serial' });
test.slow();

let event = '';
let venueLink = '';
let fileLink = '';
let number = '';

const open = (page: Page, id: string) => page.locator(`#line-${id}`);

test('an away event is prepared with 18 packs, and the check says what is open and how to mend it', async ({ browser }) => {
  await makeEventWorld();
  const page = await pageOf(browser, 'organiser', PHONE);
  const watched = watch(page);
  await page.goto('/events/new');
  await page.getByLabel('Name of the event').fill('Autumn cup');
  await page.getByLabel('Place', { exact: true }).selectOption({ label: `${EVENT_WORLD.venue} (away)` });
  await page.getByLabel('Begins').fill('2099-12-05T09:00');
  await page.getByLabel('Ends').fill('2099-12-05T08:00');
  await page.getByLabel('People of the teams').fill('16');
  await page.getByLabel('Spectators, at most').fill('30');
  await page.getByLabel('The day').fill('09:00 Doors open\n10:00 First match');
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(faultsOf(page)).toContainText('It ends after it begins');
  await page.getByLabel('Ends').fill('2099-12-05T17:00');
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await page.waitForURL(/\/events\/[0-9a-f-]{36}$/);
  event = new URL(page.url()).pathname;

  await page.goto(`${event}/packs?find=event+batch`);
  await page.getByRole('button', { name: `Save, with all ${EVENT_WORLD.packs} that are ready` }).click();
  await expect(page.getByRole('heading', { name: `${EVENT_WORLD.packs} packs go along` })).toBeVisible();
  await page.goto(`${event}/packs`);
  await page.getByLabel('By label').fill(`${EVENT_WORLD.swollen}, no such label`);
  await page.getByRole('button', { name: 'Save these' }).click();
  await expect(faultsOf(page)).toContainText('“no such label”');
  await page.getByLabel('By label').fill(EVENT_WORLD.swollen.toLowerCase());
  await page.getByRole('button', { name: 'Save these' }).click();
  await expect(page.getByRole('heading', { name: '19 packs go along' })).toBeVisible();

  await page.goto(`${event}/people`);
  await adult(page, 1, 'Kim Marsh', '01 234 56', ['Leads the team', 'First aid']);
  await adult(page, 2, 'Lee Fenn', '01 234 57', ['Drives']);
  await adult(page, 3, 'Ada Mill', '01 234 58', ['Contact at the venue']);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForURL(event);

  await page.goto(`${event}/travel`);
  await page.getByRole('radio', { name: 'By road', exact: true }).check();
  for (const label of ['rigid padded case', 'Is each lead covered', 'never left in a warm', 'ride apart', 'know what they do at smoke', 'Do two people check']) await page.getByLabel(new RegExp(label)).selectOption('yes');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForURL(event);

  await page.goto(`${event}/venue`);
  await page.getByRole('radio', { name: 'No, nothing is charged there' }).check();
  await page.getByRole('radio', { name: 'It leaves as the collector says' }).check();
  await page.getByLabel('Where are packs overnight?').selectOption('no-night');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForURL(event);

  await expect(open(page, 'packs-damaged')).toContainText(`Damaged or suspected: ${EVENT_WORLD.swollen}.`);
  await expect(open(page, 'people-stop')).toContainText('Nobody is named who may stop the match.');
  await expect(open(page, 'there-alarm')).toContainText('Not known');
  await expect(page).toHaveTitle(/Event/);
  await expectAccessible(page);
  await expectNoSidewaysScroll(page);
  expectQuiet(page, watched);
  await page.context().close();
});

async function adult(page: Page, row: number, name: string, phone: string, parts: readonly string[]): Promise<void> {
  const fields = page.getByRole('group', { name: `Adult ${row}`, exact: true });
  await fields.getByLabel('Name').fill(name);
  await fields.getByLabel('Telephone on the day').fill(phone);
  for (const part of parts) await fields.getByRole('checkbox', { name: part }).check();
}

test('two failing lines are mended, and the venue describes itself on a phone, without an account', async ({ browser }) => {
  const page = await pageOf(browser, 'organiser');
  await page.goto(event);
  await open(page, 'packs-damaged').getByRole('link', { name: /^Mend it/ }).click();
  await page.getByRole('checkbox', { name: EVENT_WORLD.swollen }).uncheck();
  await page.getByRole('button', { name: 'Save these' }).click();
  await expect(page.getByRole('heading', { name: `${EVENT_WORLD.packs} packs go along` })).toBeVisible();
  await open(page, 'people-stop').getByRole('link', { name: /^Mend it/ }).click();
  await page.getByRole('group', { name: 'Adult 1', exact: true }).getByRole('checkbox', { name: 'May stop the match' }).check();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.waitForURL(event);
  await expect(open(page, 'packs-damaged')).toHaveCount(0);
  await expect(open(page, 'people-stop')).toHaveCount(0);
  await page.getByLabel('Who is it for?').fill('Ada Mill, manager');
  await page.getByRole('button', { name: 'Make a link to describe the venue' }).click();
  venueLink = await page.getByLabel('Link for Ada Mill, manager').inputValue();

  const context = await browser.newContext({ viewport: PHONE });
  const venue = await context.newPage();
  await venue.goto(venueLink);
  await expectAccessible(venue);
  await expectNoSidewaysScroll(venue);
  await venue.getByLabel('Number to call when there is a fire').fill('112');
  await venue.getByLabel('Where everybody meets outside').fill('Car park by the mill');
  await venue.getByLabel('The building’s own alarm').fill('Call point beside the hall door, a bell in all rooms');
  await venue.getByRole('radio', { name: 'On all the time' }).check();
  await venue.getByRole('radio', { name: 'Nobody else is in the building' }).check();
  for (const box of await venue.getByRole('group', { name: 'Agreed' }).getByRole('checkbox').all()) await box.check();
  await venue.getByLabel('Your name and post').fill('Ada Mill, manager');
  await venue.getByRole('button', { name: 'Save what I know' }).click();
  await expect(venue.getByText('Saved. Thank you.')).toBeVisible();
  await venue.getByRole('link', { name: /^Describe one\s?: Outdoor spot/ }).click();
  await venue.getByLabel('Name', { exact: true }).fill('Yard behind the mill');
  await venue.getByRole('radio', { name: /^Yes, outdoors/ }).check();
  await venue.getByLabel('Your name and post').fill('Ada Mill, manager');
  await venue.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(venue.getByRole('link', { name: 'Change Yard behind the mill' })).toBeVisible();
  await context.close();

  await page.reload();
  await expect(page.locator('#links')).toContainText('Answered: Ada Mill, manager');
  await expect(page.locator('#check')).toContainText('1 open of');
  await expect(open(page, 'place-assessment').getByRole('link', { name: /^Mend it/ })).toHaveAttribute('href', /\/assessments\/new\?site=/);
  await page.context().close();
});

test('the officer lets one line stand in writing; both sign the very same file', async ({ browser }) => {
  const checking = await pageOf(browser, 'safety-officer', PHONE);
  await checking.goto(event);
  await open(checking, 'place-assessment').getByText('Let it stand, in writing').click();
  await open(checking, 'place-assessment').getByLabel('Why it can stand').fill('Nothing is charged there, and I have seen the hall.');
  await open(checking, 'place-assessment').getByRole('button', { name: /^Let it stand/ }).click();
  await expect(checking.locator('#check')).toContainText(/All \d+ lines pass/);

  const page = await pageOf(browser, 'organiser');
  await page.goto(`${event}/hand-over`);
  await expect(page.getByRole('region', { name: 'The file as you would sign it' })).toContainText('Nothing is charged there, and I have seen the hall.');
  await page.getByLabel('Your password').fill(organiser.password);
  await page.getByRole('button', { name: 'Sign and hand over' }).click();
  await expect(page).toHaveURL(event, { timeout: 90_000 });
  await expect(page.getByRole('heading', { name: `With ${officer.name}` })).toBeVisible();
  await page.goto(`${event}/sign`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Your role does not go so far');

  await checking.goto(`${event}/sign`);
  await expectAccessible(checking);
  await checking.getByRole('checkbox', { name: /^I have read file SB-/ }).check();
  await checking.getByLabel('Your password').fill(officer.password);
  await checking.getByRole('button', { name: 'Sign it' }).click();
  await expect(checking).toHaveURL(event, { timeout: 60_000 });
  await expect(checking.getByRole('heading', { name: 'Signed by both' })).toBeVisible();
  number = /SB-[0-9A-Z]{4}-[0-9A-Z]{4}/.exec(await checking.locator('#papers').innerText())?.[0] ?? '';
  await checking.getByLabel('Who is it for?').fill('Ada Mill, manager');
  await checking.getByRole('button', { name: 'Make a link to the file' }).click();
  const links = checking.locator('#links');
  await expect(links).toContainText('Not opened yet');
  fileLink = await links.getByLabel('Link for Ada Mill, manager').first().inputValue();
  await page.context().close();
  await checking.context().close();
});

test('the venue opens its file on a phone, two programs that are not ours find both signatures, and a withdrawal is said everywhere', async ({ browser }) => {
  const context = await browser.newContext({ viewport: PHONE });
  const venue = await context.newPage();
  const watched = watch(venue);
  await venue.goto(fileLink);
  await expect(venue.getByRole('heading', { name: 'Signed and in force' })).toBeVisible();
  await expect(venue.getByRole('region', { name: 'The file', exact: true })).toContainText(`${EVENT_WORLD.prefix}18`);
  await expectAccessible(venue);
  await expectNoSidewaysScroll(venue);
  expectQuiet(venue, watched);
  const file = await venue.request.get(`${fileLink}/file`);
  expect(file.headers()['content-type']).toBe('application/pdf');
  bothSignaturesIn(new Uint8Array(await file.body()));

  const page = await pageOf(browser, 'organiser');
  await page.goto(event);
  await expect(page.locator('#links')).toContainText('Opened once');
  await page.getByText('Withdraw the file').click();
  await page.getByRole('button', { name: 'Withdraw it' }).click();
  await expect(faultsOf(page)).toContainText('Write why');
  await page.getByLabel('Why it is withdrawn').fill('The hall is closed for repair.');
  await page.getByRole('button', { name: 'Withdraw it' }).click();
  await expect(page.getByRole('heading', { name: /^The file was withdrawn on/ })).toBeVisible();
  await page.context().close();

  await venue.reload();
  await expect(venue.getByRole('heading', { name: 'Withdrawn: this file is no longer in force' })).toBeVisible();
  await expect(venue.locator('.file-verdict')).toContainText('The hall is closed for repair.');
  await expect(venue.getByRole('region', { name: 'The file', exact: true })).toHaveCount(0);
  expect((await venue.request.get(`${fileLink}/file`)).status()).toBe(404);
  await venue.goto(`/verify?number=${number}`);
  await expect(venue.locator('.file-verdict h2')).toHaveText('No longer in force');
  await venue.goto(venueLink);
  await expect(venue.getByRole('heading', { name: 'This link does not work' })).toBeVisible();
  await context.close();
});

function bothSignaturesIn(bytes: Uint8Array): void {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-event-'));
  try {
    const file = path.join(folder, 'file.pdf');
    writeFileSync(file, bytes);
    const { stdout } = spawnSync('pdfsig', ['-nocert', file], { encoding: 'utf8' });
    expect(stdout.match(/Signature Validation: Signature is Valid\./g)).toHaveLength(2);
    expect(stdout).toContain('Total document signed');
    expect(spawnSync('qpdf', ['--check', file], { encoding: 'utf8' }).status).toBe(0);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
