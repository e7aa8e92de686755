import { type EventStanding, isOpen, type Move } from './standing';

const no = (why: string): Move => ({ ok: false, why });
const to = (state: Extract<Move, { readonly ok: true }>['to']): Move => ({ ok: true, to: state });

/**
 * Handing over to the officer, with the preparer's signature; also signing once more what the officer's acceptances
 * have changed. Open lines of the check do not stand in the way: the officer decides on them, and cannot sign before.
 */
export function submit({ state, preparerId, preparerSigned }: EventStanding, personId: string): Move {
  if (personId !== preparerId) return no('Only the person who prepares it hands it over, because that person signs first.');
  if (state === 'with-officer') return preparerSigned ? no('It lies with the officer already.') : to('with-officer');
  return isOpen(state) ? to('with-officer') : no('This event is closed. Copy it to make another file.');
}

/** Back to the preparer, with what is to be changed. */
export function sendBack({ state, preparerId }: EventStanding, personId: string, reason: string): Move {
  if (personId === preparerId) return no('You prepared it, so somebody else must check it.');
  if (state !== 'with-officer') return no('Only what lies with the officer can be returned.');
  return reason.trim() === '' ? no('Write what is to be changed, so that it can be changed.') : to('returned');
}

/** A line of the check that the officer lets stand changes what the file says; one that was signed before is void. */
export function acceptLine({ state, preparerId }: EventStanding, personId: string, line: { readonly mayBeAccepted: boolean; readonly open: boolean } | null): Move {
  if (personId === preparerId) return no('You prepared it, so somebody else must decide on it.');
  if (state !== 'with-officer' && !isOpen(state)) return no('This event is closed.');
  if (line === null || !line.open) return no('This line of the check is not open any more. Look at the event again.');
  return line.mayBeAccepted ? to(state) : no('This one cannot be accepted. It has to be put right.');
}

/** The officer's signature. Nobody signs both, and nothing is signed over an open line of the check. */
export function signAsOfficer({ state, preparerId, preparerSigned, officerId }: EventStanding, personId: string, openLines: readonly string[]): Move {
  if (personId === preparerId) return no('You prepared it, so somebody else must check and sign it.');
  if (state !== 'with-officer') return no('Only what lies with the officer can be signed.');
  if (officerId !== personId) return no('The file names another officer. It has to be handed over to you to be signed by you.');
  if (!preparerSigned) return no('The file has changed since it was handed over. The preparer signs it again first.');
  return openLines.length === 0 ? to('signed') : no(`It cannot be signed while the check is open: ${openLines.join(' ')}`);
}

/** A signed file is taken back, so that nobody relies on it any more: the link and the check of the file say so. */
export function withdraw({ state }: EventStanding, reason: string): Move {
  if (state !== 'signed') return no('Only a signed file can be withdrawn. What is not signed permits nothing.');
  return reason.trim() === '' ? no('Write why, so that whoever holds the file understands it.') : to('withdrawn');
}

/** The event does not take place; whatever was signed for it is withdrawn with it. */
export function cancel({ state }: EventStanding, reason: string): Move {
  if (state === 'cancelled') return no('It was called off already.');
  return reason.trim() === '' ? no('Write why it is called off.') : to('cancelled');
}

/** A signed event is opened again to be changed. Its file stays in force until another was handed over in its place. */
export function reopen({ state }: EventStanding): Move {
  return state === 'signed' ? to('draft') : no('Only a signed file can be replaced by another.');
}
