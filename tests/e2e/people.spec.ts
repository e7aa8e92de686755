import { expect, type Page } from '@playwright/test';
import { invite, join, officerPage } from './support/join-school';
import { makeSecondSchool } from './support/second-school';
import { SCHOOL, SIGN_INS, signIn, stateOf, typeSignIn, typeWrongSignIn } from './support/sign-ins';
import { test } from './support/test';
import { expectAccessible, expectNoSidewaysScroll, expectQuiet, faultsOf, watch } from './support/watched-page';

const password = 'seventeen lost umbrellas';

async function openPerson(officer: Page, name: string): Promise<void> {
  await officer.goto('/people');
  await officer.getByRole('link', { name }).click();
  await expect(officer.getByRole('heading', { name, level: 1 })).toBeVisible();
}

test.describe('signing in', () => {
  test('says nothing about which part is wrong, keeps the address, and leads to the page that was asked for', async ({ page }) => {
    const watched = watch(page);
    await page.goto('/account');
    await expect(page).toHaveURL('/sign-in?then=%2Faccount');
    await expectAccessible(page);
    const { email, password: right } = SIGN_INS.organiser;
    for (const [address, secret] of [[email, 'not the right one'], ['nobody@ternlane.example', right]] as const) {
      await typeWrongSignIn(page, { email: address, password: secret });
      await expect(faultsOf(page)).toContainText('do not belong together');
      await expect(page.getByLabel('E-mail')).toHaveValue(address);
      await expect(page.getByLabel('Password', { exact: true })).toHaveValue('');
    }
    await typeSignIn(page, { email: email.toUpperCase(), password: right });
    await expect(page).toHaveURL('/account');
    await expectAccessible(page);
    await page.getByRole('navigation', { name: 'More' }).getByRole('button', { name: 'Sign out' }).click();
    await expect(page).toHaveURL('/sign-in?out');
    await page.goto('/account');
    await expect(page).toHaveURL(/sign-in/);
    expectQuiet(page, watched);
  });

  test('leads to no other place', { tag: '@same-on-both' }, async ({ page }) => {
    await page.goto(`/sign-in?then=${encodeURIComponent('//elsewhere.example/today')}`);
    await typeSignIn(page, SIGN_INS.organiser);
    await expect(page).toHaveURL('/today');
  });

  test('has the way to verify a paper above the form', { tag: '@same-on-both' }, async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto('/sign-in');
    await expect(page.getByRole('link', { name: 'Verify the paper' })).toBeInViewport();
    await expectNoSidewaysScroll(page);
  });

  test('stops guessing at one account, whatever address is claimed and however many browsers are used', async ({ browser }) => {
    test.slow();
    const email = 'guessed.at@ternlane.example';
    for (let attempt = 1; attempt <= 11; attempt += 1) {
      const claimed = `203.0.113.${attempt}`;
      const context = await browser.newContext({ javaScriptEnabled: false, extraHTTPHeaders: { 'x-forwarded-for': claimed, 'x-real-ip': claimed, forwarded: `for=${claimed}` } });
      const page = await context.newPage();
      await page.goto('/sign-in');
      await typeWrongSignIn(page, { email, password: `guess number ${attempt}` });
      await expect(faultsOf(page)).toContainText(attempt <= 10 ? 'do not belong together' : 'Too many tries');
      await context.close();
    }
  });

  test('guesses of strangers do not lock out a browser that signed in before', async ({ browser }) => {
    test.slow();
    const officer = await officerPage(browser);
    const person = { name: 'Noor Reed', email: 'n.reed@ternlane.example', password };
    const known = await join(browser, await invite(officer, person.name, 'helper'), person);
    const stranger = await (await browser.newContext({ javaScriptEnabled: false })).newPage();
    await stranger.goto('/sign-in');
    for (let attempt = 1; attempt <= 11; attempt += 1) {
      await typeWrongSignIn(stranger, { email: person.email, password: `guess number ${attempt}` });
      await expect(faultsOf(stranger)).toContainText(attempt <= 10 ? 'do not belong together' : 'Too many tries');
    }
    await typeWrongSignIn(stranger, person);
    await expect(faultsOf(stranger)).toContainText('Too many tries');
    const [page] = known.pages();
    if (!page) throw new Error('The browser that joined has its page');
    await page.getByRole('navigation', { name: 'More' }).getByRole('button', { name: 'Sign out' }).click();
    await signIn(page, person);
    await expect(page).toHaveURL('/today');
  });
});

test.describe('without client JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  test('signs in, and shows faults with what was typed', async ({ page }) => {
    await page.goto('/sign-in');
    await typeWrongSignIn(page, { email: SIGN_INS.helper.email, password: 'not the right one' });
    await expect(page.getByText('do not belong together')).toBeVisible();
    await expect(page.getByLabel('E-mail')).toHaveValue(SIGN_INS.helper.email);
    await typeSignIn(page, SIGN_INS.helper);
    await expect(page).toHaveURL('/today');
  });
});

test.describe('people of a school', () => {
  test('an officer invites, changes a role, closes an account and opens it again', async ({ browser }) => {
    test.slow();
    const officer = await officerPage(browser);
    const watched = watch(officer);
    const person = { name: 'Ivo Sand', email: 'i.sand@ternlane.example', password };
    const link = await invite(officer, person.name, 'helper');
    await expectAccessible(officer);
    const theirs = await join(browser, link, person);
    const page = await theirs.newPage();
    await page.goto(link);
    await expect(page.getByRole('heading', { name: 'This link does not work' })).toBeVisible();
    expect((await page.goto('/people'))?.status()).toBe(403);

    await openPerson(officer, person.name);
    await officer.getByRole('radio', { name: /^Organiser/ }).check();
    await officer.getByRole('button', { name: 'Change the role' }).click();
    await expect(officer.getByRole('status')).toContainText('organiser from now on');
    await expectAccessible(officer);
    expect((await page.goto('/people'))?.status()).toBe(200);

    await officer.getByRole('button', { name: 'Close the account' }).click();
    await expect(officer.getByRole('heading', { name: 'When they come back' })).toBeVisible();
    await page.goto('/today');
    await expect(page).toHaveURL(/sign-in/);
    await typeSignIn(page, person);
    await expect(faultsOf(page)).toContainText('closed this account');
    await officer.getByRole('button', { name: 'Open the account again' }).click();
    await expect(officer.getByRole('heading', { name: 'When they leave' })).toBeVisible();
    await typeSignIn(page, person);
    await expect(page).toHaveURL('/today');
    expectQuiet(officer, watched);
  });

  test('the only officer stays one', async ({ browser }) => {
    const officer = await officerPage(browser);
    await openPerson(officer, SIGN_INS['safety-officer'].name);
    await officer.getByRole('radio', { name: /^Helper/ }).check();
    await officer.getByRole('button', { name: 'Change the role' }).click();
    await expect(faultsOf(officer)).toContainText('only safety officer');
    await officer.getByRole('button', { name: 'Close the account' }).click();
    await expect(faultsOf(officer).last()).toContainText('only safety officer');
    await officer.goto('/people');
    await expect(officer.getByRole('heading', { name: 'Invite somebody' })).toBeVisible();
  });

  test('a link that was taken back does not work', async ({ browser, page }) => {
    const officer = await officerPage(browser);
    const link = await invite(officer, 'Nobody yet', 'organiser');
    await officer.getByRole('button', { name: 'Take the link for Nobody yet back' }).click();
    await expect(officer.getByLabel('Link for Nobody yet')).toHaveCount(0);
    await page.goto(link);
    await expect(page.getByText('taken back')).toBeVisible();
    await page.goto(`${link}x`);
    await expect(page.getByText('not one of ours')).toBeVisible();
  });

  test('a link for a new password works once and signs its person out everywhere', async ({ browser }) => {
    test.slow();
    const officer = await officerPage(browser);
    const person = { name: 'Ada Shore', email: 'a.shore@ternlane.example', password };
    const theirs = await join(browser, await invite(officer, person.name, 'helper'), person);
    await openPerson(officer, person.name);
    await officer.getByRole('button', { name: 'Make a link for a new password' }).click();
    const link = await officer.getByLabel('Link for a new password').inputValue();
    const page = await (await browser.newContext()).newPage();
    await page.goto(link);
    await page.getByLabel('New password').fill('eleven quiet lanterns');
    await page.getByRole('button', { name: 'Set the password' }).click();
    await expect(page).toHaveURL('/sign-in?new');
    await typeSignIn(page, { email: person.email, password: 'eleven quiet lanterns' });
    await expect(page).toHaveURL('/today');
    await page.goto(link);
    await expect(page.getByRole('heading', { name: 'This link does not work' })).toBeVisible();
    const before = await theirs.newPage();
    await before.goto('/today');
    await expect(before).toHaveURL(/sign-in/);
  });
});

test.describe('one’s own account', () => {
  test('changes the password after the present one was given, and signs the other browsers out', async ({ browser }) => {
    test.slow();
    const person = { name: 'Uma Pike', email: 'u.pike@ternlane.example', password };
    const first = await join(browser, await invite(await officerPage(browser), person.name, 'organiser'), person);
    const second = await (await browser.newContext()).newPage();
    await signIn(second, person);
    const page = await first.newPage();
    await page.goto('/account');
    await expect(page.locator('#sessions').getByRole('listitem')).toHaveCount(2);
    const change = async (present: string, next: string) => {
      await page.getByLabel('Present password').fill(present);
      await page.getByLabel('New password').fill(next);
      await page.getByRole('button', { name: 'Change the password' }).click();
      await expect(page.getByLabel('New password')).toHaveValue('');
    };
    await change('not the right one', 'nine copper weathervanes');
    await expect(faultsOf(page)).toContainText('not your password');
    await change(password, 'umapikeumapike');
    await expect(faultsOf(page)).toContainText('others know');
    await change(password, 'nine copper weathervanes');
    await expect(page.getByRole('status').first()).toContainText('Every other browser is signed out');
    await second.goto('/today');
    await expect(second).toHaveURL(/sign-in/);
    await page.getByRole('button', { name: 'Sign out everywhere' }).click();
    await expect(page).toHaveURL('/sign-in?out');
  });
});

test.describe('somebody of one school with a link of another', () => {
  const THIRD = 'Mossgate School';
  const third = { name: 'Petra Lind', email: 'p.lind@mossgate.example', password: 'two lanterns by the weir' };
  const person = { name: 'Jo Amber', email: 'j.amber@ternlane.example', password };

  test('signs in by the link, joins with one press, and switches back', async ({ browser }) => {
    test.slow();
    await makeSecondSchool(THIRD, third);
    const officer = await officerPage(browser);
    const theirOfficer = await (await browser.newContext()).newPage();
    await signIn(theirOfficer, third);
    await (await join(browser, await invite(officer, person.name, 'organiser'), person)).close();
    const link = await invite(theirOfficer, person.name, 'helper');

    const page = await (await browser.newContext({ viewport: { width: 360, height: 740 } })).newPage();
    const watched = watch(page);
    await page.goto(link);
    await page.getByRole('link', { name: 'I have an account: sign in' }).click();
    await expect(page).toHaveURL(`/sign-in?then=${encodeURIComponent(new URL(link).pathname)}`);
    await typeSignIn(page, person);
    await expect(page).toHaveURL(link);
    await expect(page.getByText(`You are signed in as ${person.name}. Join ${THIRD} as helper.`)).toBeVisible();
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
    await page.getByRole('button', { name: `Join ${THIRD}` }).click();
    await expect(page).toHaveURL('/today');
    await page.goto('/account');
    await expect(page.getByText(`You are helper at ${THIRD}`)).toBeVisible();
    expect((await page.request.get('/people')).status()).toBe(403);
    await page.getByRole('radio', { name: SCHOOL }).check();
    await page.getByRole('button', { name: 'Go on there' }).click();
    await expect(page).toHaveURL('/today');
    await page.goto('/account');
    await expect(page.getByText(`You are organiser at ${SCHOOL}`)).toBeVisible();
    expect((await page.request.get('/people')).status()).toBe(200);
    await page.goto(link);
    await expect(page.getByText('This link was used already')).toBeVisible();

    await page.goto(await invite(theirOfficer, 'Somebody else', 'organiser'));
    await expect(page.getByRole('heading', { name: `You work at ${THIRD} already` })).toBeVisible();
    await page.getByRole('button', { name: 'Sign out and use it as somebody else' }).click();
    await page.getByLabel('Your name').fill('Somebody else');
    await page.getByLabel('Your post').fill('Coach');
    await page.getByLabel('Your e-mail').fill(person.email);
    await page.getByLabel('A password').fill('nine copper weathervanes');
    await page.getByRole('button', { name: 'Make the account' }).click();
    await expect(faultsOf(page)).toContainText('use “I have an account” above');
    expectQuiet(page, watched);

    await openPerson(theirOfficer, person.name);
    await theirOfficer.getByRole('button', { name: 'Make a link for a new password' }).click();
    await expect(faultsOf(theirOfficer)).toContainText('They work at another school too');
    await theirOfficer.goto('/today');
    await expect(theirOfficer.getByText(SCHOOL)).toHaveCount(0);
  });
});

test.describe('another school', () => {
  test.use({ storageState: stateOf('other-school') });

  test('sees nobody of this one, and cannot change anybody by their id', async ({ page, browser }) => {
    const officer = await officerPage(browser);
    await officer.goto('/people');
    const theirs = await officer.getByRole('link', { name: SIGN_INS.organiser.name }).getAttribute('href');
    expect(theirs).toMatch(/^\/people\/./);
    await page.goto('/people');
    await expect(page.getByRole('heading', { name: 'One person works here' })).toBeVisible();
    for (const { name } of Object.values(SIGN_INS)) await expect(page.getByText(name)).toHaveCount(0);
    expect((await page.goto(String(theirs)))?.status()).toBe(404);
    await page.goto('/school');
    await expect(page.getByText(SCHOOL)).toHaveCount(0);
  });
});
