import { type AssessmentState, type Decision, isOpen, no, type Standing, yes } from './standing';

interface Moved { readonly to: AssessmentState; readonly preparerSigned: boolean }

/**
 * Handing over to the officer. Stop conditions do not stand in the way: the officer decides on acceptances.
 * The preparer signs with it, so what lies with the officer is a paper that one person already answers for.
 */
export function submit(standing: Standing, personId: string): Decision<Moved> {
  if (!isOpen(standing.state)) return no(standing.state === 'with-officer' ? 'It lies with the officer already.' : 'A signed assessment does not change. Make a new version of it.');
  if (personId !== standing.preparerId) return no('Only the person who prepares it can hand it over, because that person signs first.');
  return yes({ to: 'with-officer', preparerSigned: true });
}

/** Back to the preparer, with what is to be changed. A signature on the old paper falls away with it. */
export function sendBack(standing: Standing, comment: string): Decision<Moved> {
  if (standing.state !== 'with-officer') return no('Only what lies with the officer can be returned.');
  if (comment.trim() === '') return no('Write what is to be changed, so that it can be changed.');
  return yes({ to: 'returned', preparerSigned: false });
}

/** What the officer decides on while it lies there changes the paper, so the preparer signs it once more. */
export function paperChanged(standing: Standing): Decision<Moved> {
  if (standing.state !== 'with-officer') return no('It does not lie with the officer.');
  return yes({ to: 'with-officer', preparerSigned: false });
}

/** The preparer's signature once more, on the paper as the officer's decisions have made it. */
export function signAgain(standing: Standing, personId: string): Decision<Moved> {
  if (standing.state !== 'with-officer' || standing.preparerSigned) return no('There is nothing to sign again.');
  if (personId !== standing.preparerId) return no('Only the person who prepares it signs first.');
  return yes({ to: 'with-officer', preparerSigned: true });
}

interface ToSign {
  readonly standing: Standing;
  readonly personId: string;
  /** stop conditions that hold and that nobody accepted, by title */
  readonly openStops: readonly string[];
  /** risks that grade extreme as the paper is to be signed for, by title */
  readonly extreme: readonly string[];
}

/** The officer's signature, which puts it in force. Nobody signs both as preparer and as officer. */
export function signAsOfficer({ standing, personId, openStops, extreme }: ToSign): Decision<Moved> {
  if (standing.state !== 'with-officer') return no('Only what lies with the officer can be signed.');
  if (personId === standing.preparerId) return no('You prepared it, so somebody else must check and sign it.');
  if (!standing.preparerSigned) return no('The paper has changed since it was handed over. The preparer signs it again first.');
  if (openStops.length > 0) return no(`It cannot be signed while a stop condition holds: ${openStops.join('; ')}.`);
  if (extreme.length > 0) return no(`It cannot be signed while a risk grades extreme: ${extreme.join('; ')}.`);
  return yes({ to: 'signed', preparerSigned: true });
}

/** At once, with a reason, seen everywhere; lifted by the officer alone, with a reason too. */
export function suspend(standing: Standing, reason: string): Decision<{ readonly suspended: true }> {
  if (standing.state !== 'signed') return no('Only a signed assessment can be suspended.');
  if (standing.suspended) return no('It is suspended already.');
  return reason.trim() === '' ? no('Write why, so that everybody understands it.') : yes({ suspended: true });
}

export function liftSuspension(standing: Standing, reason: string): Decision<{ readonly suspended: false }> {
  if (!standing.suspended) return no('It is not suspended.');
  return reason.trim() === '' ? no('Write what has changed, so that everybody understands it.') : yes({ suspended: false });
}

/** A next version begins as a copy; the signed one stays in force until the next is signed. */
export function newVersion(standing: Standing): Decision<{ readonly to: 'draft' }> {
  return standing.state === 'signed' || standing.state === 'superseded' ? yes({ to: 'draft' }) : no('This one is not signed yet: change it as it is.');
}
