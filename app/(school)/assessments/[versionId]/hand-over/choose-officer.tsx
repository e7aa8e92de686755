import { Button } from '@/app/_components/ui/button';
import { Field } from '@/app/_components/ui/field';
import { Section } from '@/app/_components/ui/section';

interface ChooseOfficerProps {
  readonly versionId: string;
  readonly officers: readonly { readonly value: string; readonly label: string }[];
  readonly chosen: { readonly officerId: string; readonly reviewBy: string };
  readonly today: string;
  readonly last: string;
  readonly fault: string | null;
}

/** Both stand on the paper, so they are chosen before it is read. A form that only asks for the page again. */
export function ChooseOfficer({ versionId, officers, chosen, today, last, fault }: ChooseOfficerProps) {
  return (
    <Section id="who" title="Who checks it, and how long it is to hold">
      <form action={`/assessments/${versionId}/hand-over`} className="stack fields">
        <Field id="officer" label="Safety officer" hint="Not you: nobody signs in both places">
          {(attributes) => <select {...attributes} className="select" name="officer" defaultValue={chosen.officerId}>{officers.map((officer) => <option key={officer.value} value={officer.value}>{officer.label}</option>)}</select>}
        </Field>
        <Field id="until" label="In force until" hint="At most twelve months from now. It ends sooner when what it assumes no longer holds." error={fault ?? undefined}>
          {(attributes) => <input {...attributes} className="input" type="date" name="until" min={today} max={last} defaultValue={chosen.reviewBy} />}
        </Field>
        <p className="row"><Button type="submit">Show the paper with these</Button></p>
      </form>
    </Section>
  );
}
