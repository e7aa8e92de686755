import 'server-only';
import { cache } from 'react';
import { z } from 'zod';
import { getSchool } from '@/lib/db/people/school-record';
import { LOCALES, PAPERS, UNITS, type SchoolFields } from '@/lib/people/school-fields';
import { database } from '../database';

const WrittenSchema = z.object({ units: z.enum(UNITS), paper: z.enum(PAPERS), locale: z.enum(LOCALES) });

/** What a school says about itself, by the names its form has. */
export interface CurrentSchool extends SchoolFields {
  readonly id: string;
  readonly isDemo: boolean;
  /** to be sent back with a change, so that two people do not overwrite each other */
  readonly revision: number;
}

const schoolOfId = cache(async (schoolId: string): Promise<CurrentSchool> => {
  const { name, address, demo, ...rest } = await getSchool(database(), schoolId);
  return { ...rest, ...WrittenSchema.parse(rest), schoolName: name, schoolAddress: address, isDemo: demo };
});

/** Returns the school of somebody; looked up once per request. */
export function currentSchool(actor: { readonly schoolId: string }): Promise<CurrentSchool> {
  return schoolOfId(actor.schoolId);
}
