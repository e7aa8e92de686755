import { readFileSync } from 'node:fs';
import type { APIRequestContext, APIResponse } from '@playwright/test';
import { z } from 'zod';

const ManifestSchema = z.object({
  node: z.record(z.string(), z.object({ workers: z.record(z.string(), z.unknown()), filename: z.string(), exportedName: z.string() })),
});

export interface BuiltAction {
  /** file and name, as tests/support/routes.ts has them */
  readonly id: string;
  /** by which a browser calls it */
  readonly reference: string;
  /** a page it belongs to */
  readonly address: string;
}

/** Every action of the built program, out of Next's own list. */
export function builtActions(): readonly BuiltAction[] {
  const manifest = ManifestSchema.parse(JSON.parse(readFileSync('.next/server/server-reference-manifest.json', 'utf8')));
  return Object.entries(manifest.node).map(([reference, { workers, filename, exportedName }]) => ({
    id: `${filename.replace(/^app\//, '')} ${exportedName}`,
    reference,
    address: addressOf(`${String(Object.keys(workers)[0]).replace(/^app\//, '')}.tsx`),
  }));
}

/** An id that belongs to nothing, in the place of every parameter. */
const NO_ID = '01900000-0000-7000-8000-000000000000';

/** The address of a page's or a route's file below app/. */
export function addressOf(file: string): string {
  const parts = file.split('/').slice(0, -1).filter((part) => !/^\(.*\)$/.test(part));
  return `/${parts.map((part) => (part.startsWith('[') ? NO_ID : part)).join('/')}`;
}

/** Calls an action with an empty form, as the script of the page would, from our own page or from another one. */
export function callAction(request: APIRequestContext, { reference, address }: BuiltAction, origin: string): Promise<APIResponse> {
  return request.post(address, {
    headers: { 'Next-Action': reference, Accept: 'text/x-component', Origin: origin },
    multipart: { 0: '[{"attempt":0,"faults":[],"typed":{}},"$K1"]' },
    maxRedirects: 0,
  });
}
