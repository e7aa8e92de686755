import { Section } from '@/app/_components/ui/section';
import type { RuleInWords } from '@/lib/content/model';
import type { PartProps } from './part';

/** The rules that turn a fire in this room into a severity, as the content words them. */
export function RulesPart({ content }: PartProps) {
  return (
    <Section id="rules" title="Smoke, heat and how many packs burn">
      <Rule title="Smoke" rule={content.smokeRule} />
      <Rule title="Heat" rule={content.heatRule} />
      <div className="rule">
        <h3>How many packs burn</h3>
        <ol className="prose">{content.packCountRule.steps.map((step) => <li key={step}>{step}</li>)}</ol>
        <p className="small muted">{content.packCountRule.note} Kind: {content.packCountRule.kind}.</p>
      </div>
    </Section>
  );
}

function Rule({ title, rule }: { readonly title: string; readonly rule: RuleInWords }) {
  return (
    <div className="rule">
      <h3>{title}</h3>
      <p>{rule.summary}</p>
      <ol className="prose">{rule.steps.map((step) => <li key={step}>{step}</li>)}</ol>
      <p className="small muted">Kind: {rule.kind}.</p>
    </div>
  );
}
