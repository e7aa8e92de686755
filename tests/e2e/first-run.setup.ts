import { expect, type Page } from '@playwright/test';
import { ROLES } from '@/lib/access/roles';
import { addPlaceWithRoom } from './support/assessment-pages';
import { INCIDENT_PLACE } from './support/incident-pages';
import { invite, join } from './support/join-school';
import { makeSecondSchool } from './support/second-school';
import { pageOf } from './support/signing-pages';
import { OTHER_OFFICER, SCHOOL, SIGN_INS, signIn, stateOf } from './support/sign-ins';
import { test as setup } from './support/test';
import { expectAccessible, expectQuiet, faultsOf, watch } from './support/watched-page';

const officer = SIGN_INS['safety-officer'];

// A second school before the first run would close it.
setup.describe.configure({ mode: 'serial' });

setup('first run: make a school and its officer, invite one of every role, and it is closed afterwards', async ({ page, browser }) => {
  setup.slow();
  const watched = watch(page);
  await page.goto('/sign-in');
  await expect(page).toHaveURL('/begin');
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Make the school' }).click();
  await expect(faultsOf(page)).toBeFocused();
  await expect(faultsOf(page).getByRole('link')).toHaveCount(8);
  await expectAccessible(page);

  await fillSchool(page);
  await page.getByLabel('A password').fill('Password1234');
  await page.getByRole('button', { name: 'Make the school' }).click();
  await expect(faultsOf(page)).toContainText('tried first');
  await expect(page.getByLabel('Name of the school')).toHaveValue(SCHOOL);
  await expect(page.getByLabel('A password')).toHaveValue('');
  await page.getByLabel('A password').fill(officer.password);
  await page.getByRole('button', { name: 'Make the school' }).click();
  await expect(page).toHaveURL('/today');
  await page.context().storageState({ path: stateOf('safety-officer') });

  for (const role of ROLES.filter((name) => name !== 'safety-officer')) {
    const context = await join(browser, await invite(page, SIGN_INS[role].name, role), SIGN_INS[role]);
    await context.storageState({ path: stateOf(role) });
    await context.close();
  }
  await page.goto('/begin');
  await expect(page).toHaveURL('/today');
  expectQuiet(page, watched);
});

setup('another school stands in the same installation', async ({ page }) => {
  await makeSecondSchool();
  await signIn(page, OTHER_OFFICER);
  await page.context().storageState({ path: stateOf('other-school') });
});

setup('a place of the school without any assessment', async ({ browser }) => {
  const organiser = await pageOf(browser, 'organiser');
  await addPlaceWithRoom(organiser, INCIDENT_PLACE);
  await organiser.context().close();
});

async function fillSchool(page: Page): Promise<void> {
  await page.getByLabel('Name of the school').fill(SCHOOL);
  await page.getByLabel('Address for the fire service').fill('1 Tern Lane, Millbrook, gate in Mill Street');
  await page.getByLabel('Number to call when there is a fire').fill('999');
  await page.getByLabel('Where everybody meets outside').fill('North gate');
  await page.getByLabel('Dates and numbers as in').selectOption('en-GB');
  await page.getByLabel('Time zone').selectOption('Europe/London');
  await page.getByRole('radio', { name: 'Metric' }).check();
  await page.getByRole('radio', { name: 'A4' }).check();
  await page.getByLabel('Your name').fill(officer.name);
  await page.getByLabel('Your post').fill('Deputy head');
  await page.getByLabel('Your e-mail').fill(officer.email);
}
