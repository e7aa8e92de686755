// npm start: installs, prepares, builds and serves, whatever of it is needed. Node built-ins only, for a bare clone.
// Only this file and node-version.mjs are read by a Node that is too old, so both stay with syntax every Node 14 knows.
import { readFileSync } from 'node:fs';
import { checkNodeVersion } from './start/node-version.mjs';

const packageJson = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
const node = checkNodeVersion(process.versions.node, packageJson.engines.node);

if (node.ok) {
  import('./start/main.mjs').then((module) => module.main(process.argv.slice(2)));
} else {
  console.error(node.reason);
  process.exitCode = 1;
}
