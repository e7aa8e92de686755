import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import boundaries from '@/.dependency-cruiser.mjs';
import { PACKAGES, PLANTED, TARGETS, TOOL } from './planted-imports';

const root = process.cwd();
const folder = mkdtempSync(path.join(os.tmpdir(), 'sandbucket-boundaries-'));
const CruiseSchema = z.object({
  summary: z.object({ violations: z.array(z.object({ from: z.string(), rule: z.object({ name: z.string(), severity: z.string() }) })) }),
});

/** Rules by the file that broke them. */
const broken = new Map<string, Set<string>>();

function write(file: string, text: string): void {
  const target = path.join(folder, file);
  mkdirSync(path.dirname(target), { recursive: true });
  writeFileSync(target, text);
}

function plantProject(): void {
  const versions = (names: string[]) => Object.fromEntries(names.map((name) => [name, '1.0.0']));
  write('package.json', JSON.stringify({ name: 'planted', type: 'module', dependencies: versions(PACKAGES), devDependencies: versions([TOOL]) }));
  for (const name of [...PACKAGES, TOOL]) {
    write(`node_modules/${name}/package.json`, JSON.stringify({ name, version: '1.0.0', main: 'index.js' }));
    write(`node_modules/${name}/index.js`, '');
  }
  copyFileSync(path.join(root, 'tsconfig.json'), path.join(folder, 'tsconfig.json'));
  for (const target of TARGETS) write(target, 'export const x = 1; export type X = number;');
  for (const { file, statement } of PLANTED) write(file, statement);
}

beforeAll(() => {
  plantProject();
  const cruiser = path.join(root, 'node_modules', 'dependency-cruiser', 'bin', 'dependency-cruise.mjs');
  const args = [cruiser, '.', '--config', path.join(root, '.dependency-cruiser.mjs'), '--output-type', 'json'];
  const run = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
  for (const { from, rule } of CruiseSchema.parse(JSON.parse(run.stdout)).summary.violations) {
    broken.set(from, (broken.get(from) ?? new Set()).add(rule.name));
  }
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the boundaries between the parts', () => {
  it.each(PLANTED.filter((planted) => planted.rule))('$file breaks $rule', ({ file, rule, reportedAs = file }) => {
    expect([...(broken.get(reportedAs) ?? [])]).toContain(rule);
  });

  it.each(PLANTED.filter((planted) => !planted.rule))('$file may import what it imports', ({ file }) => {
    expect([...(broken.get(file) ?? [])]).toEqual([]);
  });

  it('has a planted violation for every rule', () => {
    const planted = new Set(PLANTED.map(({ rule }) => rule));
    const names = boundaries.forbidden.map(({ name }) => name);
    expect(names.filter((name) => !planted.has(name))).toEqual([]);
  });

  it('explains every rule and fails on each', () => {
    for (const rule of boundaries.forbidden) {
      expect(rule.severity, rule.name).toBe('error');
      expect(rule.comment.length, rule.name).toBeGreaterThan(20);
    }
  });
});
