import { describe, expect, it } from 'vitest';
import { newCodes } from '@/app/_components/packs/new-codes';
import { whyNoCamera } from '@/app/_components/packs/read-codes';

/** What is read of pictures one after the other, each given by the codes in it. */
function readOf(pictures: readonly (readonly string[])[]): readonly string[] {
  const fresh = newCodes();
  return pictures.map(fresh).filter((code) => code !== null);
}

const times = (count: number, picture: readonly string[]): readonly (readonly string[])[] => Array.from({ length: count }, () => picture);

describe('codes in a picture', () => {
  it('count once while they are held still, though a picture now and then misses them', () => {
    expect(readOf([...times(20, ['A']), ...times(3, []), ...times(20, ['A'])])).toEqual(['A']);
  });

  it('count once each when several lie beside each other', () => {
    expect(readOf(times(40, ['A', 'B', 'C']))).toEqual(['A', 'B', 'C']);
  });

  it('count one after the other, and again after they were away for two seconds', () => {
    expect(readOf([...times(4, ['A']), ...times(4, ['B']), ...times(9, []), ['A']])).toEqual(['A', 'B', 'A']);
  });
});

describe('a camera that does not open', () => {
  it.each([
    [new DOMException('', 'NotAllowedError'), 'Allow it'],
    [new DOMException('', 'NotFoundError'), 'no camera'],
    [new DOMException('', 'NotReadableError'), 'Another program'],
    [new TypeError('anything'), 'could not be opened'],
  ])('%s is said in words', (error, words) => { expect(whyNoCamera(error)).toContain(words); });
});
