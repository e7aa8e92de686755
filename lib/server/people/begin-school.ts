import 'server-only';
import { writeBeginning } from '@/lib/db/people/begin-school';
import type { BeginInput } from '@/lib/people/begin';
import { passwordFault } from '@/lib/people/password';
import { isCommonPassword } from '../auth/common-passwords';
import { hashPassword } from '../auth/passwords';
import { signIn } from '../auth/sign-in';
import { database } from '../database';
import { refused, type Outcome } from '../forms/outcome';
import { isSchoolThere } from './is-school-there';
import { isSetupCode } from './setup-code';

const CLOSED = 'This program has its school already. Sign in, or ask its safety officer for a link';

/** The first run: makes school and officer, signs the officer in and leads to Today. Afterwards it is closed. */
export async function beginSchool(input: BeginInput): Promise<Outcome> {
  if (await isSchoolThere()) return refused(null, CLOSED);
  if (!isSetupCode(input.setupCode)) return refused('setupCode', 'This is not the code that was printed where the program was started');
  const fault = passwordFault({ password: input.password, isCommon: isCommonPassword, known: [input.email, input.name, input.schoolName] });
  if (fault !== null) return refused('password', fault);
  const made = await writeBeginning(database(), { input, passwordHash: await hashPassword(input.password), at: new Date() });
  if (!made) return refused(null, CLOSED);
  return signIn({ email: input.email, password: input.password, then: '/today' });
}
