import { describe, expect, it } from 'vitest';
import { parseArguments } from '@/scripts/start/arguments.mjs';

describe('parseArguments', () => {
  it('serves on port 3000 for this machine only when nothing is said', () => {
    expect(parseArguments([], undefined)).toEqual({ ok: true, options: { port: 3000, host: '127.0.0.1', demo: false, help: false } });
    expect(parseArguments([], '')).toMatchObject({ options: { port: 3000 } });
  });

  it.each([
    [['--port', '8080'], '4000', 8080],
    [['--port=8080'], undefined, 8080],
    [[], '4000', 4000],
  ])('reads %j with PORT %s as %i', (given, variable, port) => {
    expect(parseArguments(given, variable)).toMatchObject({ ok: true, options: { port } });
  });

  it('reads the host and the wish for help', () => {
    expect(parseArguments(['--host', '0.0.0.0', '--help'], undefined)).toMatchObject({ options: { host: '0.0.0.0', help: true } });
    expect(parseArguments(['--demo'], undefined)).toMatchObject({ ok: true, options: { demo: true } });
  });

  it.each(['0', '65536', '-1', '3e3', '80.5', 'http'])('refuses the port %s', (port) => {
    const parsed = parseArguments([`--port=${port}`], undefined);
    expect(parsed).toMatchObject({ ok: false });
    expect(!parsed.ok && parsed.reason).toContain('whole number from 1 to 65535');
  });

  it.each([[['--port']], [['--prot', '80']], [['3001']]])('explains itself when it is given %j', (given) => {
    const parsed = parseArguments(given, undefined);
    expect(!parsed.ok && parsed.reason).toContain('Usage: npm start');
  });
});
