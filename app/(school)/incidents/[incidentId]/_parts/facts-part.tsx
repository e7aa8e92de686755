import Link from 'next/link';
import { Section } from '@/app/_components/ui/section';
import { FACT_NAMES, FACT_TITLES, type FactName } from '@/lib/incidents/facts';
import type { IncidentRecord } from '@/lib/incidents/incident';
import { type FactNames, sayCorrected, sayFact } from '@/lib/incidents/say-fact';
import { momentWords } from '@/lib/wording/dates';

interface FactsPartProps { readonly incident: IncidentRecord; readonly names: FactNames; readonly mayCorrect: boolean }

/** Every fact as it stands, with what was said before and why it was corrected. */
export function FactsPart({ incident, names, mayCorrect }: FactsPartProps) {
  return (
    <Section id="record" title="The record" aside={`By ${incident.byName}, ${momentWords(incident.recordedAt, names.dates)}`}>
      <dl className="facts incident-facts">
        {FACT_NAMES.map((name) => (
          <div key={name}>
            <dt>{FACT_TITLES[name]}</dt>
            <dd>
              <p>{sayFact(name, incident.facts, names)}</p>
              <Before incident={incident} name={name} names={names} />
              {mayCorrect ? <Link className="correct small" href={`/incidents/${incident.id}/correct/${name}`} prefetch={false}>Correct<span className="vh"> {FACT_TITLES[name]}</span></Link> : null}
            </dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}

function Before({ incident, name, names }: { readonly incident: IncidentRecord; readonly name: FactName; readonly names: FactNames }) {
  return incident.corrections.filter(({ field }) => field === name).map(({ number, before, reason, byName, at }) => (
    <p key={number} className="said-first">Before: {sayCorrected(name, before, names)}. Corrected by {byName}, {momentWords(at, names.dates)}: {reason}</p>
  ));
}
