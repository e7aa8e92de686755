import type { z } from 'zod';
import { nearest } from '@/lib/questionnaire/nearest';
import { quoted, sayValue } from '@/lib/questionnaire/say-value';
import { AssessmentSchema, TOP_NAMES } from '../assessment-schema';
import { type DocumentFault, faultAt } from '../json/fault';
import type { Path } from '../json/json-path';
import { itemsOf, memberOf } from '../json/object';

type Issue = z.core.$ZodIssue;

/** Parts whose entries are judged by the edition, with better words than the shape alone has. */
const JUDGED_BY_CONTENT = ['answers', 'notSureTicks', 'inputs'];

/** What is wrong with the shape of a document, whatever the edition. */
export function shapeFaults(value: unknown): readonly DocumentFault[] {
  const { error } = AssessmentSchema.safeParse(value);
  const issues = error?.issues ?? [];
  return issues.filter(({ path }) => path.length < 2 || !JUDGED_BY_CONTENT.includes(String(path[0])))
    .flatMap((issue) => faultsOf(issue, [], value));
}

function faultsOf(issue: Issue, above: Path, root: unknown): readonly DocumentFault[] {
  const path = [...above, ...issue.path.filter((part) => typeof part !== 'symbol')];
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownName(path, key, issue.message));
  const inside = issue.code === 'invalid_union' ? fittingBranch(issue.errors) : undefined;
  if (inside !== undefined) return inside.flatMap((part) => faultsOf(part, path, root));
  return [faultAt(path, sizeOf(issue, valueAt(root, path)), issue.message)];
}

/** Of several shapes a value may have, the one it is meant to have: right in kind, wrong somewhere inside. */
function fittingBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  return branches.find((issues) => issues.every(({ path, code }) => path.length > 0 || code === 'unrecognized_keys'));
}

function unknownName(path: Path, name: string, wanted: string): DocumentFault {
  const meant = path.length === 0 ? nearest(name, TOP_NAMES) : undefined;
  const names = path.length === 0 ? `one of ${TOP_NAMES.map(quoted).join(', ')}` : wanted;
  return faultAt([...path, name], 'is not a name of this format', meant === undefined ? names : `${quoted(meant)} was probably meant`);
}

/** A text or list that is too long is not repeated, only measured. */
function sizeOf(issue: Issue, value: unknown): string {
  if (issue.code !== 'too_big' && issue.code !== 'too_small') return sayValue(value);
  if (Array.isArray(value)) return `has ${value.length} entries`;
  return typeof value === 'string' && value.length > 0 ? `has ${value.length} characters` : sayValue(value);
}

function valueAt(root: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, part) => (typeof part === 'number' ? itemsOf(value)[part] : memberOf(value, part)), root);
}
