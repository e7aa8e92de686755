import type { Facts } from './facts';

/** Something that cannot wait for the review. */
export interface Urgent { readonly id: 'doctor' | 'fire-service' | 'ambulance'; readonly words: string }

/**
 * What a person is needed for now, judged by the record alone: whoever breathed smoke or had a shock sees a doctor, and
 * smoke or fire without the fire service is said aloud. Not to be sure counts as yes.
 */
export function urgentOf({ hurt, breathed, kinds, called }: Pick<Facts, 'hurt' | 'breathed' | 'kinds' | 'called'>): readonly Urgent[] {
  const burned = kinds.includes('fire') || kinds.includes('smoke-or-venting');
  const urgent: Urgent[] = [];
  if (burned && !called.includes('fire-service')) urgent.push({ id: 'fire-service', words: 'There was smoke or fire, and the fire service was not called. Call it now: a pack can flare again hours later. Nobody goes in to look.' });
  if (hurt !== 'no' && !called.includes('ambulance')) urgent.push({ id: 'ambulance', words: 'Somebody may be hurt, and no ambulance was called. Trouble breathing, burns to face or hands, eyes that were touched: call one now.' });
  if (breathed !== 'no' || kinds.includes('electric-shock')) urgent.push({ id: 'doctor', words: 'Everybody who breathed smoke or had an electric shock sees a doctor the same day, even if well.' });
  return urgent;
}
