import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';

const index = readFileSync('docs/review-taken/README.md', 'utf8');
const rows = index.split('\n').filter((line) => line.startsWith('| ')).map((line) => line.split(' | ').map((cell) => cell.replace(/^\| |\s*\|$/g, '').trim()));
const points = rows.map(([point = '']) => point);
const starting = (start: string): readonly string[] => points.filter((point) => point === start || point.startsWith(`${start} `));

/** Every name a person could mean in that index. */
const known = new Set([
  ...[edition2.controls, edition2.questions, edition2.stops, edition2.inputs, edition2.scenarios, edition2.exposures, edition2.sections, edition2.packLimits.rules].flatMap((list) => list.map(({ id }) => id)),
  ...(edition2.guidance?.texts ?? []).map(({ id }) => id),
  'acceptable', 'blocks',
]);

describe('the index of the review', () => {
  it.each([
    ...Array.from({ length: 24 }, (_, index) => `S${index + 1}`),
    ...Array.from({ length: 20 }, (_, index) => `2.1 no. ${index + 1}`),
    ...Array.from({ length: 5 }, (_, index) => `3.${index + 1}`),
  ])('says of %s once what became of it', (point) => {
    expect(starting(point)).toHaveLength(1);
    const [, taken = '', where = ''] = rows.find(([first]) => first === starting(point)[0]) ?? [];
    expect(taken).toMatch(/^(yes|mostly|nearly all|by the paper)/);
    expect(where.length).toBeGreaterThan(10);
  });

  it('names only what there is', () => {
    const named = rows.flatMap((cells) => [...cells.join(' ').matchAll(/`([^`/]+)`/g)].map(([, id = '']) => id));
    expect(named.length).toBeGreaterThan(120);
    expect(named.filter((id) => !known.has(id))).toEqual([]);
  });

  it('has every control and every stop that the second edition added', () => {
    const added = [...edition2.controls.slice(-15), ...edition2.stops.slice(-7)].map(({ id }) => id);
    expect(added.filter((id) => !index.includes(`\`${id}\``))).toEqual([]);
  });
});
