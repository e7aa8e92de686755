import { handOver as keepHandOver } from '@/lib/db/assessments/hand-over';
import { returnVersion, signOff as keepSignOff } from '@/lib/db/assessments/officer-acts';
import { waitingPaperOf } from '@/lib/db/documents/read-document';
import { schoolScope } from '@/lib/db/scope';
import { newDocumentNumber } from '@/lib/server/papers/document-number';
import { endOfLog } from '@/lib/server/papers/log-end';
import { makePaper } from '@/lib/server/papers/paper-desk';
import { readyToSign } from '@/lib/server/papers/sign-as';
import { paperToSign, signedPaper } from '@/lib/server/signing/hand-over';
import { type VersionInFull, versionInFull } from '@/lib/server/signing/material';
import { paperMakings } from '@/lib/server/signing/paper-makings';
import { signedOff } from '@/lib/server/signing/sign-off';
import type { Member } from '@/lib/db/people/find-member';
import { done, type World } from './world';

/** The organiser signs the paper as it stands and hands it over. */
export async function handOver({ db, people, password, address }: World, at: Date, versionId: string, reviewBy: string): Promise<void> {
  const by = people.organiser;
  const found = await inFull(by, versionId);
  const asked = done('making the paper', await paperMakings(by, found, { officerId: people['safety-officer'].personId, reviewBy }, at));
  const number = newDocumentNumber();
  const makings = { ...asked.makings, number, verifyAt: `${address}/verify?number=${number}`, twinAt: `${address}/assessments/${versionId}/paper`, logEnd: await endOfLog(by) };
  const toSign = paperToSign(makings);
  const [made, ready] = [await makePaper(toSign.paper, {}), await readyToSign(by, password, at)];
  done('handing over', await keepHandOver(db, by, at, await signedPaper(found, makings, toSign, ready, made, asked.today)));
}

/** The officer signs the very file. */
export async function signOff({ db, people, password }: World, at: Date, versionId: string): Promise<void> {
  const by = people['safety-officer'];
  const [found, paper] = [await inFull(by, versionId), await waitingPaperOf(db, schoolScope(by), { kind: 'assessment', versionId })];
  if (paper === null) throw new Error('no paper waits for the officer');
  done('signing', await keepSignOff(db, by, at, await signedOff(by, found, paper, password, at)));
}

/** The officer sends it back, with what is to be changed. */
export async function returned({ db, people }: World, at: Date, versionId: string, comment: string): Promise<void> {
  done('returning', await returnVersion(db, people['safety-officer'], at, versionId, comment));
}

async function inFull(by: Member, versionId: string): Promise<VersionInFull> {
  const found = await versionInFull(by, versionId);
  if (found === null) throw new Error('the version is not there');
  return found;
}
