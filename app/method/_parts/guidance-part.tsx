import { Section } from '@/app/_components/ui/section';
import type { PartProps } from './part';

/** The guidance texts by title. Each stands on a page of its own: some must never be read beside another. */
export function GuidancePart({ content: { guidance } }: PartProps) {
  if (guidance === undefined) return <Section id="guidance" title="Guidance"><p>This edition has no guidance texts.</p></Section>;
  return (
    <Section id="guidance" title="Guidance" aside={`${guidance.texts.length} texts`}>
      <p>What to do, and what not, in one situation each. All are still to be confirmed by a local fire service and a first-aid trainer. Each stands on a page of its own, because some must never be read beside another.</p>
      <ul className="rows">
        {guidance.texts.map((text) => (
          <li key={text.id}>
            <a href={`/method/guidance/${text.id}`}>{text.title}</a>
            <span className="small muted">For {text.audience.join(', ')}; version {text.version}</span>
          </li>
        ))}
      </ul>
    </Section>
  );
}
