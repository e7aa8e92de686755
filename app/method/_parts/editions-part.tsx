import { Section } from '@/app/_components/ui/section';
import { editions } from '@/lib/content/editions';
import type { ShownEdition } from '../_words/edition-words';

/** Which edition this is, where the others are, and what a review changed between them. */
export function EditionsPart({ shown }: { readonly shown: ShownEdition }) {
  return (
    <Section id="editions" title="Editions" aside={`this is edition ${shown.number}`}>
      <p>An edition that was published never changes. A paper names the edition it rests on and stays readable with it.</p>
      <ul className="rows">
        {[...editions].reverse().map(({ edition, content }) => (
          <li key={edition}>
            {edition === shown.number ? <b>Edition {edition}, on this page</b> : <a href={`/method?edition=${edition}`}>Edition {edition}</a>}
            <span className="small muted">Content {content.version}: {content.scenarios.length} risks, {content.controls.length} controls, {content.questions.length} questions, {content.stops.length} stop conditions</span>
          </li>
        ))}
      </ul>
      {shown.number < 2 ? null : <Review />}
    </Section>
  );
}

/** The second edition is what three readers made of the first. */
function Review() {
  return (
    <div className="after">
      <h3>What the second edition took of its review</h3>
      <p>Three critical readers, a safety officer, a coach and a battery engineer, read the first edition. What they found, in short:</p>
      <ul className="prose">
        <li><b>Packs.</b> A verdict “leave it” above “isolate”; look, listen, smell and warmth before any voltage, and an end at the first sign; limits by kind of cell; what each rule stops.</li>
        <li><b>Stops.</b> Each says whether anybody may accept it, and most say never. Not sure of a way out or of the alarm stops too.</li>
        <li><b>Questions.</b> Whether one may charge at all comes first; yes, partly, no and not sure on every line; lengths, minutes and “of ten”, as a teacher counts them.</li>
        <li><b>Controls.</b> The whole building is warned, people who need help, known packs, one kind of cell, nothing joined on one output, nobody alone, and more.</li>
        <li><b>Physics.</b> Charging with nobody there is a risk of its own; an action moves the distances it changes; a threshold counts the whole time people breathe it.</li>
        <li><b>Guidance.</b> What to do in each situation, in fixed words.</li>
      </ul>
      <p>Point by point, with where it was taken or why not: <code>docs/review-taken</code> in the source.</p>
    </div>
  );
}
