import { describe, expect, it } from 'vitest';
import { edition2 } from '@/lib/content/edition-2';
import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import type { Answer } from '@/lib/core/document';

/** Edition 1 asked for the number of ways out together with the time to leave; edition 2 asks for it by itself. */
const exitsOf = (answers: Readonly<Record<string, Answer>>) => resolveVenue(edition2, { id: 'x', title: 'x', answers }).inputs.get('exits');
const asksForExits = edition2.questions.find((question) => question.kind === 'choice' && question.options.some((option) => option.sets.inputs.exits === 1));
const option = (exits: number): string => (asksForExits?.kind === 'choice' ? asksForExits.options.find((one) => one.sets.inputs.exits === exits)?.id : undefined) ?? '';
const id = asksForExits?.id ?? '';

describe('a figure that an earlier edition asked elsewhere', () => {
  it('counts as long as nobody has answered the question that asks for it now', () => {
    expect(exitsOf({ 'room-leave': { exits: 3 } })).toBe(3);
  });
  it('gives way to the newer answer, whichever of the two is read first', () => {
    expect(id).not.toBe('');
    expect(exitsOf({ [id]: option(1), 'room-leave': { exits: 3 } })).toBe(1);
  });
  it('does not hide that somebody is not sure now', () => {
    expect(exitsOf({ [id]: 'not sure', 'room-leave': { exits: 3 } })).toBe(exitsOf({ [id]: 'not sure' }));
  });
});
