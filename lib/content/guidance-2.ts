import guidance from './edition-2/guidance.json';
import { asGuidance } from './schema/guidance';

/** The guidance texts of the second edition. The first had none. */
export const guidance2 = asGuidance(guidance);
