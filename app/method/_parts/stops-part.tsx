import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { Acceptable } from '@/lib/content/model';
import type { PartProps } from './part';

/** What forbids starting, and whether anybody may accept it. */
export function StopsPart({ content }: PartProps) {
  const accepted = (kind: Acceptable['kind']): number => content.stops.filter((stop) => stop.acceptable?.kind === kind).length;
  const known = content.stops.some((stop) => stop.acceptable !== undefined);
  return (
    <Section id="stops" title="Stop conditions" aside={`${content.stops.length}`}>
      <p>A grade says how we rank what is left. A stop says do not start, whatever the grade.</p>
      {known ? <p className="after">{accepted('never')} can never be accepted, {accepted('with-paper')} only with a paper of an authority or an expert, {accepted('until')} for thirty days at most with something in its place.</p> : <p className="after">This edition does not say which of them an officer may accept.</p>}
      <DisclosureTable
        summary="Every stop condition"
        caption="Stop conditions"
        columns={[
          { head: 'Stop', cell: (stop) => stop.title },
          { head: 'Why', cell: (stop) => stop.why },
          { head: 'What settles it', cell: (stop) => stop.settles },
          ...(known ? [{ head: 'May it be accepted?', cell: (stop: (typeof content.stops)[number]) => acceptedWords(stop.acceptable) }] : []),
        ]}
        rows={content.stops}
        rowKey={(stop) => stop.id}
      />
    </Section>
  );
}

function acceptedWords(acceptable: Acceptable | undefined): string {
  if (acceptable === undefined) return '';
  return acceptable.kind === 'until' ? `${acceptable.text} ${acceptable.replacedBy}` : acceptable.text;
}
