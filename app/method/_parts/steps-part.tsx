import { Section } from '@/app/_components/ui/section';
import type { PartProps } from './part';

/** The calculation in words, in the order in which it runs. */
export function StepsPart({ content }: PartProps) {
  const branches = content.scenarios.reduce((sum, scenario) => sum + scenario.branches.length, 0);
  return (
    <Section id="steps" title="Step by step">
      <ol className="prose">
        <li><b>Answers.</b> {content.questions.length} questions set the state of {content.controls.length} controls and {content.inputs.length} figures. What nobody knows is “not sure”: it counts worse than half done, and widens every range.</li>
        <li><b>How often.</b> Each of {content.scenarios.length} risks has a starting rate for a team that does nothing at all, times what the team does in a season: charges, flights, trips, days of storage.</li>
        <li><b>What holds it back.</b> Each control lets a share past. It acts on a part of the causes only, its reach. Controls that rest on the same person or thing count once, the best of them.</li>
        <li><b>What follows.</b> {branches} ends: smoke breathed, burns, fire in the room, the programme stopped. How bad smoke and heat are is worked out for this room: its volume, its air, its packs, the time people need to leave.</li>
        <li><b>Harm.</b> How often times how bad, with ten times the weight for each class. Risks are ranked by it.</li>
        <li><b>Grade.</b> Read from the matrix, for the worst end by itself, at the middle of all figures. It never changes with the draw of chance.</li>
        <li><b>How sure.</b> All rates, controls and yields are drawn thousands of times together. Sand on a ruler holds nine of ten draws.</li>
        <li><b>Your own record.</b> Events counted in your seasons move the starting rate, as far as the record is long.</li>
        <li><b>What to do.</b> Every control that is missing is tried; the best set for an effort is found exactly. {content.effortRule.charAt(0).toUpperCase()}{content.effortRule.slice(1)}.</li>
        <li><b>Stops.</b> {content.stops.length} conditions forbid starting. They stand apart and are never averaged into a grade.</li>
      </ol>
    </Section>
  );
}
