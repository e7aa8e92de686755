/** Next calls it once, when a server starts. */
export async function register(): Promise<void> {
  // The edge has no database; Next puts the word in when it builds.
  if (process.env.NEXT_RUNTIME !== 'nodejs') return;
  const { keepHouse } = await import('@/lib/server/retention/keep-house');
  keepHouse();
}
