import path from 'node:path';
import { expect, type Page } from '@playwright/test';
import { ROLES, type Role } from '@/lib/access/roles';

export interface SignIn {
  readonly name: string;
  readonly email: string;
  readonly password: string;
}

/** The people of the school that the first run makes, one of each role. */
export const SIGN_INS: Readonly<Record<Role, SignIn>> = {
  'safety-officer': { name: 'Rowan Oake', email: 'r.oake@ternlane.example', password: 'brass kettle under moss' },
  'organiser': { name: 'Kim Marsh', email: 'k.marsh@ternlane.example', password: 'seven grey herons wading' },
  'event-organiser': { name: 'Lee Fenn', email: 'l.fenn@ternlane.example', password: 'wet chalk on the slate' },
  'helper': { name: 'Sam Teal', email: 's.teal@ternlane.example', password: 'orange peel in the rain' },
};

/** The officer of another school in the same installation. */
export const OTHER_OFFICER: SignIn = { name: 'Otto Bracken', email: 'o.bracken@farfield.example', password: 'thin ice over the ford' };
export const OTHER_SCHOOL = 'Farfield School';
export const SCHOOL = 'Tern Lane School';

export type SignedIn = Role | 'other-school';
export const SIGNED_IN: readonly SignedIn[] = [...ROLES, 'other-school'];

/** File that holds the cookies of somebody who is signed in: `test.use({ storageState: stateOf('organiser') })`. */
export function stateOf(who: SignedIn): string {
  return path.join('test-results', 'sign-ins', `${who}.json`);
}

/** Signs in by the form, and waits until it is done. */
export async function signIn(page: Page, { email, password }: Pick<SignIn, 'email' | 'password'>): Promise<void> {
  await page.goto('/sign-in');
  await typeSignIn(page, { email, password });
  await page.waitForURL((url) => url.pathname !== '/sign-in');
}

/** Fills the form and sends it; with a wrong password it comes back with faults. */
export async function typeSignIn(page: Page, { email, password }: Pick<SignIn, 'email' | 'password'>): Promise<void> {
  await page.getByLabel('E-mail').fill(email);
  await page.getByLabel('Password', { exact: true }).fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
}

/** The same with a password that is wrong: waits until the form came back, since what is typed before that is lost. */
export async function typeWrongSignIn(page: Page, typed: Pick<SignIn, 'email' | 'password'>): Promise<void> {
  await typeSignIn(page, typed);
  await expect(page.getByLabel('Password', { exact: true })).toHaveValue('');
}
