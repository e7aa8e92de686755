import 'server-only';
import { z } from 'zod';
import { listPacks } from '@/lib/db/packs/read-packs';
import { schoolScope } from '@/lib/db/scope';
import { MOST_LINES, readPackTable, type ReadTable } from '@/lib/packs/read-pack-table';
import type { Actor } from '../actor';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { enterPacks } from './write-packs';

/** Far more than the most packs of one table take. */
const MOST_BYTES = 1_000_000;

export const ImportSchema = z.object({
  table: z.string().max(MOST_BYTES, 'This table is too large').optional(),
  file: z.instanceof(File).optional(),
  go: z.literal('import').optional(),
});

/** What somebody sees before anything is entered. */
export interface ImportPreview extends ReadTable {
  /** goes back into the field, so that it can be put right there */
  readonly text: string;
}

/**
 * Reads a table that was pasted or uploaded and shows what it says; enters it only when somebody has seen it and nothing
 * in it is wrong.
 */
export async function importPacks(actor: Actor, input: z.output<typeof ImportSchema>): Promise<Outcome<ImportPreview>> {
  // A file field nobody used sends a file of nothing; its name depends on how the form was sent.
  const file = input.file === undefined || input.file.size === 0 ? null : input.file;
  if (file !== null && file.size > MOST_BYTES) return refused('file', `This file is too large for ${MOST_LINES} packs`);
  const text = file === null ? (input.table ?? '') : await file.text();
  if (text.trim() === '') return refused('table', 'Paste a table, or choose a file');
  const taken = (await listPacks(database(), schoolScope(actor))).map(({ pack }) => pack.label);
  const preview: ImportPreview = { ...readPackTable(text, taken), text };
  const { packs, faults } = preview;
  if (input.go !== 'import' || file !== null || faults.length > 0) return { ok: true, done: said(packs.length, faults.length), data: preview };
  const added = await enterPacks(actor, packs.map((pack) => pack.input), 'import');
  return added.ok ? { ok: true, then: '/packs' } : added;
}

function said(packs: number, faults: number): string {
  const read = packs === 1 ? 'One pack read' : `${packs} packs read`;
  if (faults === 0) return `${read}. Nothing is entered yet: look at them, then enter them.`;
  return `${read}, ${faults === 1 ? 'one place has' : `${faults} places have`} to be put right. Nothing was entered.`;
}
