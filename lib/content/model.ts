/**
 * The shape of one edition of the domain content: what may go wrong, what holds it back, what is
 * asked, and every number with its kind and basis. Plain types without a library, so that the
 * calculation core can use them; `schema.ts` checks data against the same shape. The one door to the
 * files in `model/`: whoever is outside of this folder sees the content as a whole.
 */
export type * from './model/conditions';
export type * from './model/controls';
export type * from './model/edition';
export type * from './model/guidance';
export type * from './model/inputs';
export type * from './model/matrices';
export type * from './model/pack-check';
export type * from './model/pack-parts';
export type * from './model/packs';
export type * from './model/physics';
export type * from './model/questions';
export type * from './model/scenarios';
export type * from './model/values';
