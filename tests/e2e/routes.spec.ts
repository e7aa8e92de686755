import { expect } from '@playwright/test';
import { mayEver } from '@/lib/access/can';
import type { Role } from '@/lib/access/roles';
import { ACTIONS, ROUTES, type Audience } from '@/tests/support/routes';
import { addressOf, builtActions, callAction } from './support/call-action';
import { SIGNED_IN, stateOf, type SignedIn } from './support/sign-ins';
import { test } from './support/test';

const NOT_SIGNED_IN = 'You are no longer signed in';
// In full: the beginning stands on the page for 403 too, which comes along with other answers.
const NOT_ALLOWED = 'Your role does not go so far. Nothing of this was saved';

const roleOf = (who: SignedIn): Role => (who === 'other-school' ? 'safety-officer' : who);
const isFor = (audience: Audience, role: Role) => audience === 'everyone' || audience === 'signed in' || mayEver(role, audience);

// One case walks all of a person's addresses, with soft expectations: each that is wrong is named by its file.
test('nobody is led to signing in from every page and route that is not for everyone', async ({ request }) => {
  for (const [file, audience] of Object.entries(ROUTES)) {
    const response = await request.get(addressOf(file), { maxRedirects: 0 });
    const leadsTo = response.headers().location ?? '';
    if (audience === 'everyone') {
      expect.soft(response.status(), `${file} asks nobody to sign in`).not.toBe(403);
      expect.soft(leadsTo, file).not.toContain('/sign-in?then=');
    } else {
      expect.soft(response.status(), file).toBe(307);
      expect.soft(leadsTo, file).toMatch(/^\/sign-in\?then=/);
    }
  }
});

for (const who of SIGNED_IN) {
  test.describe(who, () => {
    test.use({ storageState: stateOf(who) });

    test('comes to every page and route that is for them, and to no other', async ({ request }) => {
      for (const [file, audience] of Object.entries(ROUTES)) {
        const status = (await request.get(addressOf(file), { maxRedirects: 0 })).status();
        expect.soft(isFor(audience, roleOf(who)) ? [200, 307, 404] : [403], file).toContain(status);
      }
    });
  });
}

test('the built program has the actions that are listed', () => {
  expect(builtActions().map(({ id }) => id).sort()).toEqual(Object.keys(ACTIONS).sort());
});

const GUARDED = Object.entries(ACTIONS).filter(([, audience]) => audience !== 'everyone');

/** Those of the list, as the built program has them; the test above fails when it has not all of them. */
function guardedActions() {
  const audiences = new Map(GUARDED);
  return builtActions().flatMap((action) => {
    const audience = audiences.get(action.id);
    return audience === undefined ? [] : [{ action, audience }];
  });
}

test('nobody who is not signed in has an action done', async ({ request, baseURL }) => {
  for (const { action } of guardedActions()) {
    const response = await callAction(request, action, String(baseURL));
    const text = await response.text();
    const refused = text.includes(NOT_SIGNED_IN) || (response.headers()['x-action-redirect'] ?? '').startsWith('/sign-in');
    expect.soft(refused, `${action.id}: ${response.status()} ${text}`).toBe(true);
  }
});

for (const who of SIGNED_IN) {
  test.describe(`${who} calls`, () => {
    test.use({ storageState: stateOf(who) });

    test('every action, and is refused those that are not for them', async ({ request, baseURL }) => {
      // Those without a form would sign everybody out who is still needed.
      for (const { action, audience } of guardedActions().filter((one) => !one.action.id.endsWith('signOutEverywhere'))) {
        const text = await (await callAction(request, action, String(baseURL))).text();
        expect.soft(text.includes(NOT_SIGNED_IN), `${action.id} takes them for signed in`).toBe(false);
        expect.soft(text.includes(NOT_ALLOWED), `${action.id} refuses them`).toBe(!isFor(audience, roleOf(who)));
      }
    });
  });
}

test.describe('a form of another site', () => {
  test.use({ storageState: stateOf('safety-officer') });

  test('is not taken, though the browser is signed in', async ({ request }) => {
    const invite = guardedActions().find(({ action }) => action.id === '(school)/people/actions.ts inviteAction');
    if (!invite) throw new Error('Inviting is an action of the list');
    const response = await callAction(request, invite.action, 'https://elsewhere.example');
    expect(response.ok()).toBe(false);
  });
});
