import type { ReactNode } from 'react';
import { requireActor } from '@/lib/server/actor';
import { currentSchool } from '@/lib/server/people/current-school';
import { SchoolFrame } from './_frame/school-frame';

/** Everything of a school. Each page asks who is there by itself too: a layout is not run again when one page leads to another. */
export default async function SchoolLayout({ children }: { readonly children: ReactNode }) {
  const actor = await requireActor();
  const school = await currentSchool(actor);
  return <SchoolFrame name={actor.name} role={actor.role} school={school.schoolName}>{children}</SchoolFrame>;
}
