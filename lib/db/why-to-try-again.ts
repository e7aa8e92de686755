/** `met-another`: another transaction was in the way. `taken`: a number or name that was free a moment ago is not. */
export type WhyToTryAgain = 'met-another' | 'taken';

/** Thrown when a conditional change inside a transaction found that its row had been changed in between. */
export class MetAnother extends Error {
  override readonly name = 'MetAnother';
}

/** Prisma's codes: SQLite's lock, PostgreSQL's serialisation or deadlock, and a unique index. */
const BY_CODE: Readonly<Record<string, WhyToTryAgain>> = { P1008: 'met-another', P2034: 'met-another', P2002: 'taken' };

/** The same as the driver adapters say it, which is how it comes when BEGIN or COMMIT failed. */
const BY_KIND: Readonly<Record<string, WhyToTryAgain>> = { SocketTimeout: 'met-another', TransactionWriteConflict: 'met-another' };

/** Returns why a transaction that threw this may succeed when it is done again, or null when it would not. */
export function whyToTryAgain(error: unknown): WhyToTryAgain | null {
  if (error instanceof MetAnother) return 'met-another';
  return BY_CODE[textOf(error, 'code')] ?? BY_KIND[textOf(propertyOf(error, 'cause'), 'kind')] ?? null;
}

function propertyOf(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined;
}

function textOf(value: unknown, name: string): string {
  const found = propertyOf(value, name);
  return typeof found === 'string' ? found : '';
}
