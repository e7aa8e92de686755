// Prints a link by which somebody sets a new password. Started by `npm run new-password`, with its settings in the environment.
import { parseArgs } from 'node:util';
import { openDatabase } from '@/lib/db/client';
import { passwordLinkFromOutside } from '@/lib/server/people/password-link-from-outside';

const USAGE = 'Say whose it is: npm run new-password -- --email name@school.example';

async function makeLink(email: string, url: string, address: string): Promise<number> {
  const db = openDatabase(url);
  try {
    const made = await passwordLinkFromOutside(db, email, new Date());
    if (!made.ok) {
      console.error(made.reason);
      return 1;
    }
    const link = address === '' ? `the address of your program, and after it ${made.path}` : new URL(made.path, address).href;
    console.log(`For ${made.name}. It works once, for an hour; hand it over yourself. It stands in the log of their school.\n\n${link}\n`);
    return 0;
  } finally {
    await db.$disconnect();
  }
}

const { values: { email } } = parseArgs({ options: { email: { type: 'string' } }, strict: false });
const { DATABASE_URL: url, LINK_ADDRESS: address = '' } = process.env;
if (typeof email !== 'string' || url === undefined) {
  console.error(USAGE);
  process.exitCode = 2;
} else {
  process.exitCode = await makeLink(email, url, address);
}
