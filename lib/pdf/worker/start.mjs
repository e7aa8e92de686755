import { register } from 'tsx/esm/api';

// The worker thread begins here, where Node needs no help, and goes on in TypeScript.
register();
await import('./entry.ts');
