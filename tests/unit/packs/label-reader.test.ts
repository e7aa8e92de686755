import { expect, it } from 'vitest';
import { packPathOf } from '@/app/_components/packs/label-reader';

const ID = '01900000-0000-7000-8000-000000000000';

it.each([
  ['a label of ours', `https://school.example/packs/${ID}`, `/packs/${ID}`],
  ['a label of another program', `https://other.example/packs/${ID}`, null],
  ['another page of ours', 'https://school.example/school', null],
  ['a page below the pack', `https://school.example/packs/${ID}/edit`, null],
  ['no address at all', 'W-11', null],
  ['a script', `javascript:location='https://school.example/packs/${ID}'`, null],
])('leads by %s to that pack only', (_, text, path) => { expect(packPathOf(text, 'https://school.example')).toBe(path); });
