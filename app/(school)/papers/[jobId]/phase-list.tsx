import { Icon } from '@/app/_components/ui/icon';
import type { PaperJob } from '@/lib/server/papers/paper-jobs';

/** The steps of a making, with the one it is at. Heard once for each step, not for each page. */
export function PhaseList({ job: { phase, pages } }: { readonly job: Pick<PaperJob, 'phase' | 'pages'> }) {
  const keeping = phase === 'keeping';
  const now = keeping ? 'Signing and keeping it' : pages === 0 ? 'Waiting for its turn' : 'Setting the pages';
  return (
    <>
      <p role="status" className="vh">{now}</p>
      <ol className="paper-phases">
        <Step state={pages > 0 || keeping ? 'done' : 'now'}>Waiting for its turn</Step>
        <Step state={keeping ? 'done' : pages > 0 ? 'now' : 'later'}>{pages === 0 ? 'Setting the pages' : `Setting the pages: ${pages} so far`}</Step>
        <Step state={keeping ? 'now' : 'later'}>Signing and keeping it</Step>
      </ol>
    </>
  );
}

interface StepProps { readonly state: 'done' | 'now' | 'later'; readonly children: string }

function Step({ state, children }: StepProps) {
  return <li className={state} aria-current={state === 'now' ? 'step' : undefined}>{state === 'done' ? <Icon name="check" /> : <i aria-hidden="true" />}<span>{children}</span>{state === 'done' ? <span className="vh"> (done)</span> : null}</li>;
}
