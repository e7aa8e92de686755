import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { faultsOfIssues } from '@/lib/forms/faults-of-issues';
import { emailAddress, line, listOf, optional, optionalLine } from '@/lib/forms/fields';
import { readForm } from '@/lib/forms/read-form';

function formOf(entries: readonly (readonly [string, string | File])[]): FormData {
  const form = new FormData();
  for (const [name, value] of entries) form.append(name, value);
  return form;
}

describe('readForm', () => {
  it('gives the schema a value per name, a list where there are several, and leaves out what the framework adds', () => {
    const { input } = readForm(formOf([['$ACTION_REF_1', ''], ['label', 'W-1'], ['areas', 'a'], ['areas', 'b'], ['note', '']]));
    expect(input).toEqual({ label: 'W-1', areas: ['a', 'b'], note: '' });
  });

  it('never gives a password or a setup code back to be shown', () => {
    const { input, typed } = readForm(formOf([['email', 'k@x.example'], ['password', 'secret one'], ['currentPassword', 'secret two'], ['newPassword', 'secret three'], ['setupCode', 'ABCD']]));
    expect(Object.keys(input)).toHaveLength(5);
    expect(typed).toEqual({ email: 'k@x.example' });
  });

  it('keeps files for the schema only, and takes a file nobody chose as absent', () => {
    const photo = new File(['x'], 'x.jpg');
    const { input, typed } = readForm(formOf([['photo', photo], ['plan', new File([], '')], ['map', new File([], 'undefined')]]));
    expect(input).toEqual({ photo });
    expect(typed).toEqual({});
  });
});

describe('the fields', () => {
  const schema = z.object({ name: line('Enter a name'), email: optional(emailAddress('')), note: optionalLine(), areas: listOf(z.string()) });

  it('drop spaces, lower-case addresses and keep what is empty as null, not as an empty text', () => {
    expect(schema.parse({ name: ' Kim ', email: ' K@X.Example ', note: '  ' })).toEqual({ name: 'Kim', email: 'k@x.example', note: null, areas: [] });
    expect(schema.parse({ name: 'Kim', email: '', areas: 'a' })).toEqual({ name: 'Kim', email: null, note: null, areas: ['a'] });
  });

  it('say one thing per field, in the words of the form', () => {
    const parsed = schema.safeParse({ name: ' ', email: 'kim', note: 'x'.repeat(201) });
    expect(parsed.success ? [] : faultsOfIssues(parsed.error.issues)).toEqual([
      { field: 'name', message: 'Enter a name' },
      { field: 'email', message: 'Write the address with an @ and the part after it, such as name@school.example' },
      { field: 'note', message: 'Use at most 200 characters' },
    ]);
  });
});
