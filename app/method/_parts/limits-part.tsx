import { Section } from '@/app/_components/ui/section';

/** What the numbers must not be taken for. */
export function LimitsPart() {
  return (
    <Section id="limits" title="What it does not claim">
      <ul className="prose">
        <li>It permits nothing. The local fire code, the fire service, the maker of the pack and your safety officer come first.</li>
        <li>Rates, failures of controls, reaches and weights are nearly all our judgement. They are meant for order, not for prediction.</li>
        <li>Smoke is taken as evenly mixed in the room. Near the pack it is far worse, within seconds; a factor stands for that, and it is our judgement.</li>
        <li>Carbon monoxide and hydrogen fluoride are counted. Other gases, soot and lack of oxygen are not.</li>
        <li>A time until some level is reached is never a time to stay.</li>
        <li>A burnt pack can flare again hours later. The model does not say when a room may be entered; only the fire service does.</li>
        <li>It has not been checked against a count of real fires in school teams, because nobody has published one.</li>
      </ul>
    </Section>
  );
}
