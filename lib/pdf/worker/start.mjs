import { fileURLToPath } from 'node:url';
import { register } from 'tsx/esm/api';

// The worker thread begins here, where Node needs no help, and goes on in TypeScript.
register({ tsconfig: fileURLToPath(new URL('../../../tsconfig.json', import.meta.url)) });
await import('./entry.ts');
