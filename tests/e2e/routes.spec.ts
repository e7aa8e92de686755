import { expect, test } from '@playwright/test';
import { mayEver } from '@/lib/access/can';
import type { Role } from '@/lib/access/roles';
import { ACTIONS, ROUTES, type Audience } from '@/tests/support/routes';
import { addressOf, builtActions, callAction } from './support/call-action';
import { SIGNED_IN, stateOf, type SignedIn } from './support/sign-ins';

const NOT_SIGNED_IN = 'You are no longer signed in';
// In full: the beginning stands on the page for 403 too, which comes along with other answers.
const NOT_ALLOWED = 'Your role does not go so far. Nothing of this was saved';

const roleOf = (who: SignedIn): Role => (who === 'other-school' ? 'safety-officer' : who);
const isFor = (audience: Audience, role: Role) => audience === 'everyone' || audience === 'signed in' || mayEver(role, audience);

test.describe('nobody', () => {
  for (const [file, audience] of Object.entries(ROUTES)) {
    test(`at ${file}`, async ({ request }) => {
      const response = await request.get(addressOf(file), { maxRedirects: 0 });
      if (audience === 'everyone') {
        expect(response.status(), 'a page for everyone asks nobody to sign in').not.toBe(403);
        expect(response.headers().location ?? '').not.toContain('/sign-in?then=');
      } else {
        expect(response.status()).toBe(307);
        expect(response.headers().location).toMatch(/^\/sign-in\?then=/);
      }
    });
  }
});

for (const who of SIGNED_IN) {
  test.describe(who, () => {
    test.use({ storageState: stateOf(who) });

    for (const [file, audience] of Object.entries(ROUTES)) {
      test(`at ${file}`, async ({ request }) => {
        const response = await request.get(addressOf(file), { maxRedirects: 0 });
        if (isFor(audience, roleOf(who))) expect([200, 307, 404]).toContain(response.status());
        else expect(response.status()).toBe(403);
      });
    }
  });
}

test('the built program has the actions that are listed', () => {
  expect(builtActions().map(({ id }) => id).sort()).toEqual(Object.keys(ACTIONS).sort());
});

const GUARDED = Object.entries(ACTIONS).filter(([, audience]) => audience !== 'everyone');
const actionOf = (id: string) => {
  const action = builtActions().find((one) => one.id === id);
  if (!action) throw new Error(`The built program has no action ${id}`);
  return action;
};

test.describe('nobody calls', () => {
  for (const [id] of GUARDED) {
    test(id, async ({ request, baseURL }) => {
      const response = await callAction(request, actionOf(id), String(baseURL));
      const refused = (await response.text()).includes(NOT_SIGNED_IN) || (response.headers()['x-action-redirect'] ?? '').startsWith('/sign-in');
      expect(refused, `${response.status()} ${await response.text()}`).toBe(true);
    });
  }
});

for (const who of SIGNED_IN) {
  test.describe(`${who} calls`, () => {
    test.use({ storageState: stateOf(who) });

    // Those without a form would sign everybody out who is still needed.
    for (const [id, audience] of GUARDED.filter(([name]) => !name.endsWith('signOutEverywhere'))) {
      test(id, async ({ request, baseURL }) => {
        const text = await (await callAction(request, actionOf(id), String(baseURL))).text();
        expect(text).not.toContain(NOT_SIGNED_IN);
        if (isFor(audience, roleOf(who))) expect(text).not.toContain(NOT_ALLOWED);
        else expect(text).toContain(NOT_ALLOWED);
      });
    }
  });
}

test.describe('a form of another site', () => {
  test.use({ storageState: stateOf('safety-officer') });

  test('is not taken, though the browser is signed in', async ({ request }) => {
    const response = await callAction(request, actionOf('(school)/people/actions.ts inviteAction'), 'https://elsewhere.example');
    expect(response.ok()).toBe(false);
  });
});
