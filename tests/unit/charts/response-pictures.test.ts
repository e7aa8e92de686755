import { describe, expect, it } from 'vitest';
import { type ResponsePicture, responsePicture } from '@/lib/charts/pictures/response-pictures';
import { faultsOf } from '@/tests/support/scene-facts';

const ALL: readonly ResponsePicture[] = ['everybody out', 'shut the door', 'raise the alarm', 'call from outside', 'meet and count'];

describe.each(ALL)('the drawing for %s', (name) => {
  it('stays inside its square, has no word in it, and tells what it shows', () => {
    const picture = responsePicture(name);
    expect(faultsOf(picture)).toEqual([]);
    expect(picture.marks.some((mark) => mark.kind === 'text')).toBe(false);
    expect(picture.title).toMatch(/^[A-Z].*\.$/);
  });

  it('is a drawing of its own', () => {
    expect(ALL.filter((other) => JSON.stringify(responsePicture(other).marks) === JSON.stringify(responsePicture(name).marks))).toEqual([name]);
  });
});
