import { describe, expect, it } from 'vitest';
import { serverEnvironment } from '@/scripts/start/server-environment.mjs';
import { welcome } from '@/scripts/start/welcome.mjs';

const place = { url: 'file:/srv/school.db', secret: 's'.repeat(43), address: 'http://localhost:3000', host: '127.0.0.1', set: {} as NodeJS.ProcessEnv };

describe('serverEnvironment', () => {
  it('hands over the kept secret and the address, and asks for no code where only this machine can come', () => {
    const expected = { DATABASE_URL: place.url, BETTER_AUTH_SECRET: place.secret, BETTER_AUTH_URL: place.address, SANDBUCKET_SETUP_CODE: '' };
    for (const host of ['127.0.0.1', '127.0.1.1', 'localhost', '::1']) expect(serverEnvironment({ ...place, host })).toEqual(expected);
  });

  it('makes another code at each start when others can come', () => {
    const codes = ['0.0.0.0', '::', '192.168.1.20', '127.evil.example'].map((host) => serverEnvironment({ ...place, host }).SANDBUCKET_SETUP_CODE);
    for (const code of codes) expect(code).toMatch(/^([A-HJ-NP-Z2-9]{4}-){3}[A-HJ-NP-Z2-9]{4}$/);
    expect(new Set(codes).size).toBe(codes.length);
  });

  it('lets what is set go first', () => {
    const set = { NODE_ENV: 'production', BETTER_AUTH_SECRET: 'own', BETTER_AUTH_URL: 'https://safety.school.example', SANDBUCKET_SETUP_CODE: 'ours' } as const;
    expect(serverEnvironment({ ...place, host: '0.0.0.0', set })).toMatchObject({ BETTER_AUTH_SECRET: 'own', BETTER_AUTH_URL: 'https://safety.school.example', SANDBUCKET_SETUP_CODE: 'ours' });
  });
});

describe('welcome', () => {
  const server = { address: 'http://localhost:3000', host: '127.0.0.1', setupCode: '', isNew: true };

  it('leads to the first run while there is no school, with the code where one is asked for', () => {
    expect(welcome(server)).toContain('http://localhost:3000/begin');
    expect(welcome(server)).toContain('Only this machine can reach it.');
    expect(welcome({ ...server, host: '0.0.0.0', setupCode: 'ABCD-EFGH-JKLM-NPQR' })).toContain('ABCD-EFGH-JKLM-NPQR');
  });

  it('leads to the sign-in afterwards, and prints no code', () => {
    const later = welcome({ ...server, host: '0.0.0.0', setupCode: 'ABCD-EFGH-JKLM-NPQR', isNew: false });
    expect(later).toContain('sign in');
    expect(later).not.toContain('ABCD');
    expect(later).toContain('open to your network');
  });
});
