import { describe, expect, it } from 'vitest';
import { forwardedHeaders, PATH_HEADER } from '@/lib/server/forwarded-headers';
import { ownPath } from '@/lib/server/own-path';

describe('ownPath', () => {
  it.each(['/packs', '/packs/3?from=today', '/sign-in?then=%2Fpacks'])('keeps %s', (path) => {
    expect(ownPath(path)).toBe(path);
  });

  it.each(['//elsewhere.example', '/\\elsewhere.example', 'https://elsewhere.example/packs', 'javascript:alert(1)', '/\t/elsewhere.example', '/..//elsewhere.example', 'packs', '', null, undefined])('takes the other page for %j', (path) => {
    expect(ownPath(path)).toBe('/today');
  });
});

describe('forwardedHeaders', () => {
  it('hands on no address a sender claims, and the path that is asked for instead of the one that was sent', () => {
    const sent = new Headers({ 'X-Forwarded-For': '203.0.113.7', Forwarded: 'for=203.0.113.7', 'X-Real-IP': '203.0.113.7', [PATH_HEADER]: '/elsewhere', Cookie: 'a=b', 'X-Forwarded-Host': 'school.example' });
    expect(Object.fromEntries(forwardedHeaders(sent, '/packs?x=1'))).toEqual({ cookie: 'a=b', 'x-forwarded-host': 'school.example', [PATH_HEADER]: '/packs?x=1' });
  });
});
