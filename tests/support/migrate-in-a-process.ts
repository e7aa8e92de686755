// Run by a test in several processes at once: node --import tsx migrate-in-a-process.ts <address> <project folder>
import { migrate } from '@/lib/db/migrate/migrate';

const [url, root] = process.argv.slice(2);
if (!url || !root) throw new Error('address and project folder are missing');
console.log(JSON.stringify(await migrate(url, root)));
