import { currentActor } from '@/lib/server/actor';
import { isSchoolThere } from '@/lib/server/people/is-school-there';
import { ButtonLink } from './_components/ui/button';
import { Frame } from './_components/ui/frame';
import { MarginNote } from './_components/ui/margin-note';
import { PageHead } from './_components/ui/page-head';
import { Section } from './_components/ui/section';

export default function StartPage() {
  return (
    <Frame marginLabel="About this" margin={<MarginNote title="What it is not"><p>It permits nothing and forbids nothing by itself. It ranks what may go wrong, says how sure that is, and names what to do first.</p><p><a href="/method">How it is computed</a></p></MarginNote>}>
      <PageHead
        title="Can your team charge, store and carry its packs here?"
        lead="For schools that fly small drones in cages indoors on lithium-polymer packs. Describe the room, the charging table, the store and what people do; see which risks remain, how sure we are, what forbids starting, and which few actions take most of the harm away."
      />
      <SchoolPart />
      <Section id="page" title="In the browser, without an account">
        <p>Start from one of three rooms, or bring a description of your own, and change the answers into yours. Everything is worked out in your browser; nothing you enter leaves it.</p>
        <div className="actions"><ButtonLink href="/try">Try a room</ButtonLink></div>
      </Section>
      <Section id="command" title="From the command line">
        <p>The same numbers, without the page, from a file in the form <code>sandbucket-assessment.v1</code>:</p>
        <div className="scroll after" tabIndex={0} role="region" aria-label="Commands"><pre><code>{COMMANDS}</code></pre></div>
        <p className="small muted after">Faults in the file stand on a line each, with their place and what would be right; then nothing is scored. The form is described in <a href="/schema/sandbucket-assessment.v1.schema.json">its JSON Schema</a>.</p>
      </Section>
    </Frame>
  );
}

/** The way in, by what there is: a school to make, one to sign in to, or Today. */
async function SchoolPart() {
  const [actor, isThere] = await Promise.all([currentActor(), isSchoolThere()]);
  const way = actor ? { href: '/today', text: 'Go to Today' } : isThere ? { href: '/sign-in', text: 'Sign in' } : { href: '/begin', text: 'Make your school' };
  return (
    <Section id="school" title="With your school">
      <p>Prepare an assessment together, have it checked and signed by your safety officer, keep the packs, record incidents. All of it stays in this installation.</p>
      <div className="actions"><ButtonLink href={way.href} kind="main">{way.text}</ButtonLink><ButtonLink href="/verify" kind="plain">Verify a paper</ButtonLink></div>
    </Section>
  );
}

const COMMANDS = `npm run --silent score -- public/examples/bad-store.json --text
npm run --silent score -- public/examples/bad-store.json`;
