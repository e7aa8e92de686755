import { describe, expect, it } from 'vitest';
import { routeFiles, serverFunctions } from '@/tests/support/app-files';
import { ACTIONS, ROUTES, type Audience } from '@/tests/support/routes';

/** How a page or route of each audience begins: by asking who is there. */
function asksFor(audience: Audience): RegExp | null {
  if (audience === 'everyone') return null;
  return audience === 'signed in' ? /await requireActor\(\)/ : new RegExp(`await requireMay\\('${audience}'\\)`);
}

/** How an action of each audience is made. */
function guardsFor(audience: Audience): RegExp {
  if (audience === 'everyone') return /openAction(<.*>)?\(|^export async function /;
  return audience === 'signed in' ? /guardedAction(<.*>)?\(\{\s*may: null,|await requireActor\(\)/ : new RegExp(`guardedAction(<.*>)?\\(\\{\\s*may: '${audience}',`);
}

describe('every page and route', () => {
  it('is listed with whom it is for', () => {
    expect(routeFiles().map(({ file }) => file)).toEqual(Object.keys(ROUTES).sort());
  });

  it.each(routeFiles().map(({ file, source }) => [file, source] as const))('%s asks who is there as its audience says', (file, source) => {
    const asked = asksFor(ROUTES[file] ?? 'signed in');
    if (asked) expect(source).toMatch(asked);
    else expect(source).not.toMatch(/requireActor|requireMay/);
  });
});

describe('every function a browser can call', () => {
  it('is listed with whom it is for', () => {
    expect(serverFunctions().map(({ id }) => id).sort()).toEqual(Object.keys(ACTIONS).sort());
  });

  it.each(serverFunctions().map(({ id, source }) => [id, source] as const))('%s is guarded as its audience says', (id, source) => {
    expect(source).toMatch(guardsFor(ACTIONS[id] ?? 'signed in'));
  });
});
