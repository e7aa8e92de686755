import Link from 'next/link';
import { ButtonLink } from '@/app/_components/ui/button';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { OpenVersion } from '@/lib/server/assessments/open-version';
import type { Overview, ToLookAt } from '@/lib/server/assessments/overview';

/** What is not known: to be found out, by whom. */
export function OverviewLists({ overview, open: { version, closed, walk } }: { readonly overview: Overview; readonly open: OpenVersion }) {
  const { notSure, missing, forCaretaker, copied } = overview;
  const { orphaned } = walk.resolution;
  const here = `/assessments/${version.id}`;
  return (
    <>
      <Section id="not-sure" title="Not sure" aside={String(notSure.length)}>
        {notSure.length === 0 ? <p className="muted">No answer is “not sure”.</p> : <LookList rows={notSure} here={here} />}
      </Section>
      {missing.length === 0 ? null : <Section id="missing" title="Not answered" aside={String(missing.length)}><Disclosure summary="Show the questions"><LookList rows={missing} here={here} /></Disclosure></Section>}
      {closed !== null ? null : (
        <Section id="caretaker" title="For the building’s caretaker">
          <p>{forCaretaker === 0 ? 'Nothing that the caretaker knows best is open.' : `${forCaretaker} open ${forCaretaker === 1 ? 'question is' : 'questions are'} best answered by whoever looks after the building: air, detectors, doors, the circuit.`}</p>
          <p className="row after"><ButtonLink href={`${here}/caretaker`}>Send questions by a link</ButtonLink></p>
        </Section>
      )}
      {copied === 0 ? null : <p className="small muted after">{copied === 1 ? 'One answer is' : `${copied} answers are`} copied from the version before. Look through the pages, and change what is no longer so.</p>}
      {orphaned.length === 0 ? null : <p className="small muted after">{orphaned.length === 1 ? 'One answer does not count now, because its question does not apply. It is kept.' : `${orphaned.length} answers do not count now, because their questions do not apply. They are kept.`}</p>}
    </>
  );
}

function LookList({ rows, here }: { readonly rows: readonly ToLookAt[]; readonly here: string }) {
  return (
    <ul className="rows">
      {rows.map(({ question, page, waitsFor, what }) => (
        <li key={question.id}>
          <Link href={`${here}/walk/${page}#walk-${question.id}`} prefetch={false}>{question.text}</Link>
          <span className="small muted">{[what, waitsFor === '' ? '' : `waits for ${waitsFor}`].filter((part) => part !== '').join('; ')}</span>
        </li>
      ))}
    </ul>
  );
}
