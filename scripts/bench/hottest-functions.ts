import { Session } from 'node:inspector/promises';

export interface HotFunction { readonly name: string; readonly file: string; readonly share: number }

/** Functions by their own share of the samples while `run` runs, most first. */
export async function hottestFunctions(run: () => void): Promise<readonly HotFunction[]> {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.setSamplingInterval', { interval: 200 });
  await session.post('Profiler.start');
  run();
  const { profile } = await session.post('Profiler.stop');
  session.disconnect();
  const samples = profile.samples ?? [];
  const counts = new Map<number, number>();
  for (const sample of samples) counts.set(sample, (counts.get(sample) ?? 0) + 1);
  const byName = new Map<string, { readonly name: string; readonly file: string; count: number }>();
  for (const node of profile.nodes) {
    const { functionName, url, lineNumber } = node.callFrame;
    if (url === '') continue;
    const key = `${functionName} ${url} ${lineNumber}`;
    const entry = byName.get(key) ?? { name: functionName === '' ? '(unnamed)' : functionName, file: url.split('/').slice(-3).join('/'), count: 0 };
    entry.count += counts.get(node.id) ?? 0;
    byName.set(key, entry);
  }
  return [...byName.values()].map(({ name, file, count }) => ({ name, file, share: count / samples.length })).sort((one, other) => other.share - one.share);
}
