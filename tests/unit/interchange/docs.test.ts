import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { TOP_NAMES } from '@/lib/interchange/assessment-schema';

const PAGE = readFileSync('docs/interchange.md', 'utf8');
const MENTIONED = new Set([...PAGE.matchAll(/`([^`]+)`/g)].flatMap(([, code = '']) => [code, ...(code.match(/[\w$-]+/g) ?? [])]));

/** Names of all properties in a JSON Schema, however deep. */
function namesIn(schema: unknown): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  return Object.entries(schema).flatMap(([key, value]) => (key === 'properties' ? [...Object.keys(value as object), ...Object.values(value as object).flatMap(namesIn)] : namesIn(value)));
}

/** Names of all properties that the types of the result declare. */
function namesOfResult(): readonly string[] {
  const names: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertySignature(node)) names.push(node.name.getText());
    ts.forEachChild(node, visit);
  };
  const files = ['lib/core/result.ts', ...readdirSync('lib/core/result').map((name) => `lib/core/result/${name}`)];
  for (const file of files) visit(ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true));
  return names.map((name) => name.replaceAll("'", ''));
}

describe('docs/interchange.md', () => {
  it('explains every field of the document', () => {
    const schema: unknown = JSON.parse(readFileSync('public/schema/sandbucket-assessment.v1.schema.json', 'utf8'));
    const names = [...new Set([...TOP_NAMES, ...namesIn(schema)])];
    expect(names.length).toBeGreaterThan(30);
    expect(names.filter((name) => !MENTIONED.has(name))).toEqual([]);
  });

  it('explains every field of the result', () => {
    const names = [...new Set(namesOfResult())];
    expect(names.length).toBeGreaterThan(100);
    expect(names.filter((name) => !MENTIONED.has(name))).toEqual([]);
  });
});
