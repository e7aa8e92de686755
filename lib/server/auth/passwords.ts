import 'server-only';
import { hash, verify } from '@node-rs/argon2';

/** argon2id is the package's own choice of variant. OWASP Password Storage Cheat Sheet, first choice for argon2id: 19 MiB, two passes, one lane. */
const COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/** Returns the argon2id hash of a password, with its salt and cost in it (PHC string). */
export function hashPassword(password: string): Promise<string> {
  return hash(password, COST);
}

/** Says whether the password belongs to the hash. */
export function passwordMatches(passwordHash: string, password: string): Promise<boolean> {
  return verify(passwordHash, password);
}
