import { expect } from '@playwright/test';
import { openExample } from './support/room-page';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, expectReadableInDark, watch } from './support/watched-page';

const VERDICTS = {
  'good-hall': /^No stop condition holds/,
  'ordinary-classroom': /^Do not start\. .*stops? it\.$/,
  'bad-store': /^Do not start\. \d\d conditions stop it\.$/,
};

const WIDTHS = [360, 1280];

for (const [example, verdict] of Object.entries(VERDICTS)) {
  test(`${example}, on a phone and a desktop, light and dark: readable by everybody, quiet, and inside the window`, async ({ page }) => {
    test.slow();
    await page.setViewportSize({ width: 360, height: 900 });
    const watched = watch(page);
    await openExample(page, example);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(verdict);
    await page.goto(`/try?example=${example}#risk-charge-runaway`);
    await expect(page.getByRole('heading', { name: 'What leads to it, what follows' })).toBeVisible();
    await page.goto(`/try?example=${example}#q-table-surface`);
    await expect(page.getByRole('group', { name: 'What are the packs standing on?' })).toBeVisible();
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 900 });
      await expectNoSidewaysScroll(page);
      await expectAccessible(page);
      await expectReadableInDark(page);
    }
    expectQuiet(page, watched);
  });
}

for (const path of ['/', '/method', '/method/guidance/smoke', '/try']) {
  test(`${path}, on a phone and a desktop, light and dark: readable by everybody, quiet, and inside the window`, async ({ page }) => {
    const watched = watch(page);
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 900 });
      await expectNoSidewaysScroll(page);
      await expectAccessible(page);
      await expectReadableInDark(page);
    }
    expectQuiet(page, watched);
  });
}

test('without scripts the page says what is missing and names the command', async ({ request }) => {
  const html = await (await request.get('/try?example=good-hall')).text();
  const without = /<noscript>(.*?)<\/noscript>/s.exec(html)?.[1] ?? '';
  expect(without).toContain('needs scripts for it');
  expect(without).toContain('npm run --silent score --');
});
