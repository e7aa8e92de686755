import { test as base } from '@playwright/test';

/**
 * Every test takes this one. A browser is kept for many tests, and what a test opened in it beside its own page would stay
 * open, look again by itself and take its share of the machine until the last of them has run.
 */
export const test = base.extend<{ closesWhatItOpened: undefined }>({
  closesWhatItOpened: [async ({ browser }, use) => {
    await use(undefined);
    await Promise.all(browser.contexts().map((context) => context.close()));
  }, { auto: true }],
});
