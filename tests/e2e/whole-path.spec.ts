import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import { addPlaceWithRoom, beginAssessment } from './support/assessment-pages';
import { pressOn, tabTo, typeInto } from './support/keyboard';
import { expectRankingOf } from './support/result-numbers';
import { inProject, scoreByCommand } from './support/score-command';
import { SIGN_INS } from './support/sign-ins';
import { beginFromFile, handOver, pageOf, signOff, untilSigned, verdictOn } from './support/signing-pages';
import { test } from './support/test';
import { expectQuiet, watch } from './support/watched-page';
import { answerPage, type Answers } from './support/whole-path/answer-page';
import { expectGoodScreen } from './support/whole-path/good-screen';
import { closeIncident, recordWithPack } from './support/whole-path/incident-to-end';
import { enterPlaceAndPacks } from './support/whole-path/place-and-packs';
import { downloadPaper, pdfsigOf, returnWithComment } from './support/whole-path/review-and-sign';
import { walkAll } from './support/whole-path/walk-all';

// The school and its people are made by the first run, which has its own checks.
const EXAMPLE = 'public/examples/good-hall.json';
const { organiser, 'safety-officer': officer } = SIGN_INS;
const WIDTHS = [
  { name: 'a phone', stem: 'WP', viewport: { width: 360, height: 740 }, tag: [] },
  { name: 'a desktop', stem: 'WD', viewport: { width: 1280, height: 900 }, tag: ['@same-on-both'] },
];

function answersOfExample(): Answers {
  const { answers } = JSON.parse(readFileSync(inProject(EXAMPLE), 'utf8')) as { readonly answers: Answers };
  return answers;
}

/** The document of a draft, saved by its link, worked out by the command; the page says the same. */
async function expectCommandAgrees(page: Page, overview: string, file: string): Promise<string> {
  await page.goto(overview);
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'Save the document' }).click();
  await (await download).saveAs(file);
  const result = await scoreByCommand(file);
  await page.goto(`${overview}/result`);
  await expectRankingOf(page, result);
  await expectGoodScreen(page);
  return result.inputHash;
}

/** The first thing that could be done becomes an action with somebody to do it. */
async function makeAction(page: Page, overview: string): Promise<void> {
  await page.goto(`${overview}/result`);
  const more = page.locator('#first details summary');
  if (await page.locator('#first').getByRole('link', { name: /^Make it an action/ }).filter({ visible: true }).count() === 0) await more.first().click();
  await page.locator('#first').getByRole('link', { name: /^Make it an action/ }).filter({ visible: true }).first().click();
  await expect(page).toHaveURL(/actions\/new/);
  await expectGoodScreen(page);
  const title = await page.getByLabel('What is to be done').inputValue();
  await page.getByLabel('By', { exact: true }).fill('2027-01-31');
  await page.getByRole('button', { name: 'Add the action' }).click();
  await expect(page).toHaveURL(`${overview}/result#actions`);
  await expect(page.locator('#actions')).toContainText(title);
}

for (const { name, stem, viewport, tag } of WIDTHS) {
  test(`from a place without anything to a closed incident, on ${name}`, { tag }, async ({ browser }, info) => {
    test.setTimeout(480_000);
    const [place, title, packs] = [`Path house ${stem}`, `Path ${stem}`, [`${stem}-01`, `${stem}-02`]];
    const [teacher, checking, stranger] = [await pageOf(browser, 'organiser', viewport), await pageOf(browser, 'safety-officer', viewport), await (await browser.newContext({ viewport })).newPage()];
    const watched = [teacher, checking, stranger].map((page) => ({ page, seen: watch(page) }));
    let overview = '';

    await test.step('a place with its areas, and packs', () => enterPlaceAndPacks(teacher, place, packs));
    await test.step('every question is answered in the browser, and the numbers are those of the command', async () => {
      overview = new URL(await beginAssessment(teacher, place, title)).pathname;
      const walked = await walkAll(teacher, answersOfExample());
      expect(new Set(walked).size).toBeGreaterThanOrEqual(20);
      await teacher.goto(overview);
      await expect(teacher.getByText('Every question is answered.')).toBeVisible();
      await expectGoodScreen(teacher);
      const inputHash = await expectCommandAgrees(teacher, overview, info.outputPath('walked.json'));
      expect(inputHash, 'what was clicked and typed is what the example has').toBe((await scoreByCommand(inProject(EXAMPLE))).inputHash);
    });
    await test.step('a suggestion becomes an action, and the preparer signs', async () => {
      await makeAction(teacher, overview);
      await teacher.goto(`${overview}/hand-over`);
      await expectGoodScreen(teacher);
      await handOver(teacher, overview);
    });
    await test.step('the officer returns it with a comment', async () => {
      await checking.goto('/today');
      await expect(checking.getByRole('main')).toContainText(`Check “${title}”`);
      await returnWithComment(checking, overview, 'electric-kit', 'Please ask the caretaker about leakage protection.');
    });
    await test.step('the answer is put right and it is handed over again', async () => {
      await teacher.goto('/today');
      await expect(teacher.getByRole('main')).toContainText(`“${title}”, version 1 came back with comments`);
      await expectGoodScreen(teacher);
      await teacher.goto(`${overview}/walk/electric`);
      await answerPage(teacher, { ...answersOfExample(), 'electric-kit': { sum: 'yes', wall: 'yes', guard: 'yes', switch: 'yes', kit: 'yes', leakage: 'yes' } });
      await teacher.getByRole('button', { name: 'Save and stop' }).click();
      await expect(teacher).toHaveURL(/\?saved$/);
      await expectGoodScreen(teacher);
      await handOver(teacher, overview);
    });
    await test.step('the officer signs; the kept file has two valid signatures and is in force', async () => {
      await checking.goto(`${overview}/sign`);
      await expectGoodScreen(checking);
      await signOff(checking, overview);
      await expect(checking.getByRole('heading', { name: /^In force until/ })).toBeVisible();
      await expectGoodScreen(checking);
      const file = await downloadPaper(checking, overview);
      const said = pdfsigOf(file);
      if (said !== undefined) {
        expect(said.match(/Signature Validation: Signature is Valid\./g)).toHaveLength(2);
        expect(said).toContain(organiser.name);
        expect(said).toContain(officer.name);
      }
      expect(await verdictOn(stranger, 'paper.pdf', file)).toBe('Unchanged and in force');
      await expectGoodScreen(stranger);
    });
    await test.step('an incident isolates its pack and puts the assessment in doubt, until the officer closes it', async () => {
      const incident = await recordWithPack(teacher, place, packs[0] ?? '');
      await checking.goto('/today');
      await expect(checking.getByRole('list', { name: 'Now' })).toContainText(`Look at “${title}”, version 1 again`);
      await expectGoodScreen(checking);
      await checking.goto(`${overview}/result`);
      await expect(checking.locator('#standing')).toContainText(/review/i);
      await expectGoodScreen(checking);
      await closeIncident(checking, incident);
      await checking.goto(`${overview}/result`);
      await checking.getByText(/^Settle the review asked by/).click();
      await checking.getByLabel('What you looked at, and what came of it').fill('The charger was set too high; the answers still hold.');
      await checking.getByRole('button', { name: 'Settle it' }).click();
      await expect(checking.getByRole('heading', { name: /^In force until/ })).toBeVisible();
    });
    for (const { page, seen } of watched) {
      expectQuiet(page, seen);
      await page.context().close();
    }
  });
}

test('signing in, walking, reading the result and handing over, by keyboard alone', { tag: '@same-on-both' }, async ({ browser, page }) => {
  test.setTimeout(240_000);
  const before = await pageOf(browser, 'organiser');
  await addPlaceWithRoom(before, 'Path house WK');
  const overview = await beginFromFile(before, inProject(EXAMPLE), 'Path house WK');
  await before.context().close();
  const watched = watch(page);

  await page.goto('/sign-in');
  await typeInto(page, page.getByLabel('E-mail'), organiser.email);
  await typeInto(page, page.getByLabel('Password', { exact: true }), organiser.password);
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL('/today');
  await pressOn(page, page.getByRole('navigation').getByRole('link', { name: 'Assessments' }).filter({ visible: true }));
  await expect(page).toHaveURL('/assessments');
  await pressOn(page, page.locator(`main a[href="${overview}"]`));
  await expect(page).toHaveURL(overview);
  await pressOn(page, page.locator(`main a[href="${overview}/walk/first-place"]`));
  await expect(page).toHaveURL(/first-place$/);

  await tabTo(page, page.locator('input[name="room-exits"]:checked'));
  await page.keyboard.press('ArrowDown');
  await expect(page.locator('input[name="room-exits"][value="one"]')).toBeChecked();
  for (const next of ['first-charging', 'first-alarm']) {
    await pressOn(page, page.getByRole('button', { name: 'Save and go on' }));
    await expect(page).toHaveURL(new RegExp(`/walk/${next}(\\?saved)?$`));
    await expectGoodScreen(page);
  }
  await pressOn(page, page.getByRole('button', { name: 'Save and stop' }));
  await expect(page).toHaveURL(new RegExp(`${overview}(\\?saved)?$`));
  await pressOn(page, page.getByRole('link', { name: 'See the result' }));
  await expect(page).toHaveURL(`${overview}/result`);
  await expectGoodScreen(page);
  await pressOn(page, page.getByRole('link', { name: 'Hand it over' }));
  await expect(page).toHaveURL(`${overview}/hand-over`);
  const sign = async () => {
    await tabTo(page, page.getByLabel('Your password'));
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type(organiser.password);
    await page.keyboard.press('Enter');
  };
  await sign();
  await untilSigned(page, overview, sign);
  await expect(page.getByRole('heading', { name: `With ${officer.name}` })).toBeVisible();
  await expectGoodScreen(page);
  expectQuiet(page, watched);
});
