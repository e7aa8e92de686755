import 'server-only';
import { timingSafeEqual } from 'node:crypto';
import { env } from '../env';
import { sealOf } from '../secret';

/** Says whether the first run asks for the code that was printed at the start. */
export function asksForSetupCode(): boolean {
  return env.setupCode !== undefined;
}

/** Says whether the code is right, or none is asked for. Compared by seals of one length, in the same time whatever was given. */
export function isSetupCode(given: string | undefined): boolean {
  if (env.setupCode === undefined) return true;
  const [a, b] = [given ?? '', env.setupCode.toUpperCase()].map((code) => Buffer.from(sealOf('sign-in-attempts', `setup ${code}`)));
  return a !== undefined && b !== undefined && timingSafeEqual(a, b);
}
