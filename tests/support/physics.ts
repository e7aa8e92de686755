import { edition1 } from '@/lib/content/edition-1';
import { physicsModel } from '@/lib/core/physics-model';

/** The physical numbers of the first edition of the content, which the reference venues were computed with. */
export const model = physicsModel(edition1);
