import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { buildInputs, sourceFingerprint } from '@/scripts/start/fingerprint.mjs';
import { temporaryFolder } from '@/tests/support/temporary-folder';

function project() {
  const root = temporaryFolder();
  const write = (file: string, text: string) => {
    mkdirSync(path.dirname(path.join(root, file)), { recursive: true });
    writeFileSync(path.join(root, file), text);
  };
  write('package-lock.json', '{}');
  write('next.config.ts', 'export default {};');
  write('app/page.tsx', 'one');
  write('lib/core/score.ts', 'two');
  return { root, write };
}

describe('sourceFingerprint', () => {
  it('stays the same for the same files', () => {
    const { root } = project();
    expect(sourceFingerprint(root)).toBe(sourceFingerprint(root));
  });

  it.each([
    ['an edit', (root: string) => writeFileSync(path.join(root, 'app/page.tsx'), 'eno')],
    ['another lock file', (root: string) => writeFileSync(path.join(root, 'package-lock.json'), '{ }')],
    ['a new file', (root: string) => writeFileSync(path.join(root, 'app/new.tsx'), '')],
    ['a lost file', (root: string) => rmSync(path.join(root, 'lib/core/score.ts'))],
    ['a new name', (root: string) => renameSync(path.join(root, 'app/page.tsx'), path.join(root, 'app/other.tsx'))],
  ])('changes with %s', (_what, change) => {
    const { root } = project();
    const before = sourceFingerprint(root);
    change(root);
    expect(sourceFingerprint(root)).not.toBe(before);
  });

  it('does not mind what a build never reads', () => {
    const { root, write } = project();
    const before = sourceFingerprint(root);
    for (const file of ['tests/unit/a.test.ts', 'docs/a.md', 'vitest.config.ts', 'next-env.d.ts', 'lib/db/generated/sqlite/client.ts', 'data/secret', '.next/BUILD_ID']) write(file, 'x');
    expect(sourceFingerprint(root)).toBe(before);
  });

  it('counts the files of this project that matter', () => {
    const inputs = buildInputs(process.cwd());
    for (const file of ['next.config.ts', 'proxy.ts', 'package-lock.json', 'tsconfig.json', 'app/api/health/route.ts', 'prisma/models/installation.prisma']) expect(inputs).toContain(file);
  });
});
