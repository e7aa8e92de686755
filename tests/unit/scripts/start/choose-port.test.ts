import { createServer, type Server } from 'node:net';
import { once } from 'node:events';
import { describe, expect, it, onTestFinished } from 'vitest';
import { choosePort } from '@/scripts/start/choose-port.mjs';
import { browserAddress, nextFreePort, portState } from '@/scripts/start/ports.mjs';

const taken = (...ports: number[]) => (port: number) => Promise.resolve(ports.includes(port) ? 'taken' : 'free');

async function listen(host: string): Promise<number> {
  const server: Server = createServer().listen(0, host);
  await once(server, 'listening');
  onTestFinished(() => void server.close());
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
}

describe('choosePort', () => {
  it('takes the wanted port when it is free', async () => {
    expect(await choosePort(3000, '127.0.0.1', undefined, taken())).toEqual({ ok: true, port: 3000 });
  });

  it('takes the next free one and says so when nobody can be asked', async () => {
    const choice = await choosePort(3000, '127.0.0.1', undefined, taken(3000, 3001));
    expect(choice).toEqual({ ok: true, port: 3002, note: 'Port 3000 is taken by another program, so this uses port 3002.' });
  });

  it('asks a person, and leaves it when the answer is no', async () => {
    const questions: string[] = [];
    const answering = (answer: string) => (question: string) => {
      questions.push(question);
      return Promise.resolve(answer);
    };
    expect(await choosePort(3000, '127.0.0.1', answering(''), taken(3000))).toEqual({ ok: true, port: 3001 });
    expect(await choosePort(3000, '127.0.0.1', answering(' Yes'), taken(3000))).toEqual({ ok: true, port: 3001 });
    expect(await choosePort(3000, '127.0.0.1', answering('n'), taken(3000))).toMatchObject({ ok: false });
    expect(questions[0]).toContain('Use port 3001 instead?');
  });

  it.each(['forbidden', 'no-such-host'])('gives a reason when the port is %s', async (state) => {
    const choice = await choosePort(80, '10.9.9.9', undefined, () => Promise.resolve(state));
    expect(!choice.ok && choice.reason).toMatch(/above 1023|no address 10\.9\.9\.9/);
  });

  it('gives up after fifty taken ports', async () => {
    const choice = await choosePort(3000, '127.0.0.1', undefined, () => Promise.resolve('taken'));
    expect(!choice.ok && choice.reason).toContain('the fifty after it are taken');
  });
});

describe('portState', () => {
  it.each(['127.0.0.1', '0.0.0.0'])('sees that another program listens on %s', async (host) => {
    expect(await portState(await listen(host), '127.0.0.1')).toBe('taken');
  });

  it('sees a free port and an address this machine does not have', async () => {
    const used = await listen('127.0.0.1');
    const free = await nextFreePort(used, (port) => portState(port, '127.0.0.1'));
    expect(free).toBeGreaterThan(used);
    // 192.0.2.0/24 is set aside for documentation (RFC 5737), so no machine has it.
    expect(await portState(free ?? 0, '192.0.2.1')).toBe('no-such-host');
  });
});

describe('browserAddress', () => {
  it.each([
    ['127.0.0.1', 'http://localhost:3000'],
    ['0.0.0.0', 'http://localhost:3000'],
    ['::', 'http://localhost:3000'],
    ['10.0.0.5', 'http://10.0.0.5:3000'],
    ['fd00::5', 'http://[fd00::5]:3000'],
  ])('for %s is %s', (host, address) => {
    expect(browserAddress(3000, host)).toBe(address);
  });
});
