import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import type { Content } from '@/lib/content/model';
import { physicsModel } from '@/lib/core/physics-model';
import { areaAir } from '@/lib/core/risk/area-air';
import { inPlace } from '@/lib/core/risk/candidates';
import { ready } from '../../../support/evaluate';

const outdoors = (content: Content, storageVolume: number) =>
  areaAir(ready({ id: 'x', title: 'x', answers: {}, inputs: { storageOutdoor: 1, storageVolume } }, content).venue, physicsModel(content), 'storage');

describe('air outdoors', () => {
  it('is the box of the content, whatever small room was typed in', () => {
    for (const content of [edition1, edition2]) expect(outdoors(content, 20)).toMatchObject({ volumeM3: 500, airChanges: 60 });
  });

  it('is never less than the room it takes the place of, since the second edition', () => {
    expect(outdoors(edition2, 1200)).toMatchObject({ volumeM3: 1200, airChanges: 60 });
    expect(outdoors(edition1, 1200)).toMatchObject({ volumeM3: 500, airChanges: 60 });
  });

  it('so taking a store out of a large hall thickens no smoke', () => {
    const { venue } = ready({ id: 'x', title: 'x', answers: { 'store-where': 'room', 'store-size': { storageLength: 60, storageWidth: 40, storageHeight: 9 }, 'store-air': 'fan' } }, edition2);
    const [before, after] = [venue, inPlace(venue, ['store-away'])].map((one) => areaAir(one, physicsModel(edition2), 'storage'));
    expect(after?.volumeM3).toBe(before?.volumeM3);
    expect(after?.airChanges).toBeGreaterThan(before?.airChanges ?? Infinity);
  });
});
