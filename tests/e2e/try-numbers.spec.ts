import { expect, type Page } from '@playwright/test';
import { percent } from '../../lib/wording/numbers';
import type { ScoreResult } from '../../lib/core/result';
import { expectRankingOf } from './support/result-numbers';
import { openExample, scored } from './support/room-page';
import { inProject, scoreByCommand } from './support/score-command';
import { test } from './support/test';

/** The ranking, the totals, the best set and the stops of the page are those of a result. */
async function expectNumbersOf(page: Page, result: ScoreResult): Promise<void> {
  await expectRankingOf(page, result);
  await expect(page.locator('#effort-words')).toContainText(`take away ${percent(result.bestSet.cut)}`);
  await expect(page.locator('#stops h3')).toHaveText(result.stops.map((stop) => stop.title));
}

for (const example of ['good-hall', 'ordinary-classroom', 'bad-store']) {
  test(`${example}: the page says what the command says`, async ({ page }) => {
    await openExample(page, example);
    await expectNumbersOf(page, await scoreByCommand(inProject(`public/examples/${example}.json`)));
  });
}

test('a changed and planned room, downloaded: the command says what the page says', async ({ page }, info) => {
  await page.goto('/try?example=ordinary-classroom#q-table-surface');
  await scored(page);
  const before = await scoreByCommand(inProject('public/examples/ordinary-classroom.json'));
  await page.getByRole('group', { name: 'What are the packs standing on?' }).getByRole('radio', { name: /Wood, plastic or carpet/ }).check();
  await page.getByRole('checkbox', { name: /A spot outdoors/ }).first().check();
  await scored(page);
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Download the document' }).click()]);
  const file = info.outputPath('changed.json');
  await download.saveAs(file);
  const after = await scoreByCommand(file);
  expect(after.totalHarm).toBeGreaterThan(before.totalHarm);
  expect(after.plannedHarm).toBeLessThan(after.totalHarm);
  await expectNumbersOf(page, after);
});
