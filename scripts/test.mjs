// npm test: everything, from a bare clone. Node built-ins only; see start.mjs for why so little stands here.
import { readFileSync } from 'node:fs';
import { checkNodeVersion } from './start/node-version.mjs';

const packageJson = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
const node = checkNodeVersion(process.versions.node, packageJson.engines.node);

if (node.ok) {
  import('./test/main.mjs').then((module) => module.main());
} else {
  console.error(`${node.reason}\n0 passed, 1 failed`);
  process.exitCode = 1;
}
