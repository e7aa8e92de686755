import type { Action } from '@/lib/access/table';

/**
 * Who a page, a route or an action is for. `everyone`: without an account. `signed in`: whoever works in a school, for
 * what belongs to the person or to all. An action of lib/access: those whose role may do it in some case.
 */
export type Audience = 'everyone' | 'signed in' | Action;

/** Every page and route by its file, below app/. What is not listed fails tests/unit/access/routes.test.ts. */
export const ROUTES: Readonly<Record<string, Audience>> = {
  'page.tsx': 'everyone',
  'try/page.tsx': 'everyone',
  'method/page.tsx': 'everyone',
  'method/guidance/[id]/page.tsx': 'everyone',
  'components/page.tsx': 'everyone',
  'verify/page.tsx': 'everyone',
  'emergency/page.tsx': 'everyone',
  'emergency/[way]/page.tsx': 'everyone',
  'api/health/route.ts': 'everyone',

  '(door)/sign-in/page.tsx': 'everyone',
  '(door)/begin/page.tsx': 'everyone',
  '(door)/invitation/[token]/page.tsx': 'everyone',
  '(door)/new-password/[token]/page.tsx': 'everyone',

  '(school)/today/page.tsx': 'school.read',
  '(school)/account/page.tsx': 'signed in',
  '(school)/school/page.tsx': 'school.read',
  '(school)/people/page.tsx': 'people.read',
  '(school)/people/[personId]/page.tsx': 'people.change',
};

/** Every function a browser can call, by its file and name. */
export const ACTIONS: Readonly<Record<string, Audience>> = {
  '(door)/sign-in/actions.ts signInAction': 'everyone',
  '(door)/begin/actions.ts beginAction': 'everyone',
  '(door)/invitation/[token]/actions.ts acceptAction': 'everyone',
  '(door)/new-password/[token]/actions.ts newPasswordAction': 'everyone',

  'verify/actions.ts checkFileAction': 'everyone',
  'verify/actions.ts checkNumberAction': 'everyone',

  '(school)/account/actions.ts changePasswordAction': 'signed in',
  // Signing out of nothing changes nothing.
  '(school)/account/actions.ts signOutHere': 'everyone',
  '(school)/account/actions.ts signOutEverywhere': 'signed in',
  '(school)/school/actions.ts changeSchoolAction': 'school.change',
  '(school)/people/actions.ts inviteAction': 'people.invite',
  '(school)/people/actions.ts revokeInvitationAction': 'people.invite',
  '(school)/people/actions.ts changeRoleAction': 'people.change',
  '(school)/people/actions.ts closeAccountAction': 'people.change',
  '(school)/people/actions.ts reopenAccountAction': 'people.change',
  '(school)/people/[personId]/actions.ts passwordLinkAction': 'people.change',
};
