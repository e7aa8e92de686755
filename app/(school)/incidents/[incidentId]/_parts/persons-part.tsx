import { ButtonLink } from '@/app/_components/ui/button';
import { Section } from '@/app/_components/ui/section';
import { Table } from '@/app/_components/ui/table';
import { AFFECTED_ROLES, labelOf, YES_NO } from '@/lib/incidents/choices';
import type { IncidentRecord } from '@/lib/incidents/incident';

/** Who was affected: roles and initials. */
export function PersonsPart({ incident: { id, persons }, mayCorrect }: { readonly incident: IncidentRecord; readonly mayCorrect: boolean }) {
  if (persons.length === 0 && !mayCorrect) return null;
  return (
    <Section id="people" title="Who was affected">
      {persons.length === 0 ? <p>Nobody is written down.</p> : (
        <Table
      stacked
          caption="People who were affected"
          rows={persons}
          rowKey={(person) => person.id}
          columns={[
            { head: 'Who', cell: ({ role, initials, removedAt }) => `${labelOf(AFFECTED_ROLES, role)}${initials === null ? '' : `, ${initials}`}${removedAt === null ? '' : ' (no initials any more)'}` },
            { head: 'Hurt', cell: ({ hurt }) => labelOf(YES_NO, hurt) },
            { head: 'Breathed smoke', cell: ({ breathed }) => labelOf(YES_NO, breathed) },
            { head: 'First aid, doctor', cell: ({ firstAid }) => firstAid ?? 'Nothing written' },
          ]}
        />
      )}
      {mayCorrect ? <p className="row"><ButtonLink href={`/incidents/${id}/correct/persons`}>Add people</ButtonLink></p> : null}
    </Section>
  );
}
