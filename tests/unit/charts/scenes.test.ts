import { describe, expect, it } from 'vitest';
import { faultsOf, overlapsOf } from '@/tests/support/scene-facts';
import { results, scenesOf } from './venues';

describe.each(results.map((result) => [result.venue, result] as const))('the charts of %s', (_, result) => {
  const scenes = scenesOf(result);

  it('stay inside their scenes and are finite', () => {
    expect(scenes.flatMap(({ name, scene }) => faultsOf(scene).map((fault) => `${name}: ${fault}`))).toEqual([]);
  });

  it('write no word over another', () => {
    expect(scenes.flatMap(({ name, scene }) => overlapsOf(scene).map((pair) => `${name}: ${pair}`))).toEqual([]);
  });

  it('each tell their finding in a sentence', () => {
    for (const { name, scene } of scenes.filter((one) => !one.name.startsWith('thread') && one.name !== 'scale' && !one.name.startsWith('ruler'))) {
      expect(scene.title, name).toMatch(/^[A-Z0-9].*\.$/);
    }
  });
});
