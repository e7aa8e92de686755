import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { ruleWords } from '../_words/rule-words';
import type { PartProps } from './part';

/** The rules that turn a fire in this room into a severity: in words, and behind them as they are worked out. */
export function RulesPart({ content }: PartProps) {
  const words = ruleWords(content);
  const { packCountRule, smokeRule, heatRule } = content;
  return (
    <Section id="rules" title="Smoke, heat and how many packs burn">
      <Rule title="Smoke" words={words.smoke} steps={smokeRule.steps} note={`Kind: ${smokeRule.kind}.`} />
      <Rule title="Heat" words={words.heat} steps={heatRule.steps} note={`Kind: ${heatRule.kind}.`} />
      <Rule title="How many packs burn" words={words.packs} steps={packCountRule.steps} note={`Kind: ${packCountRule.kind}.`} />
    </Section>
  );
}

interface RuleProps { readonly title: string; readonly words: readonly string[]; readonly steps: readonly string[]; readonly note: string }

function Rule({ title, words, steps, note }: RuleProps) {
  return (
    <div className="rule">
      <h3>{title}</h3>
      <ol className="prose">{words.map((word) => <li key={word}>{word}</li>)}</ol>
      <Disclosure summary="As it is worked out, with the names of its numbers"><ol className="prose">{steps.map((step) => <li key={step}>{step}</li>)}</ol></Disclosure>
      <p className="small muted">{note}</p>
    </div>
  );
}
