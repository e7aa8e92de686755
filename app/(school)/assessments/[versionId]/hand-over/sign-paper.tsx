import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormPassword, FormSubmit } from '@/app/_components/form/form-fields';
import { FormWaiting } from '@/app/_components/form/form-waiting';
import { PaperSheet } from '@/app/_components/paper/paper-sheet';
import { Notice } from '@/app/_components/ui/notice';
import { Section } from '@/app/_components/ui/section';
import type { PreparedPaper } from '@/lib/server/signing/paper-view';
import type { ResultView } from '@/lib/server/signing/result-view';
import { handOverAction } from './actions';

interface SignPaperProps {
  readonly view: ResultView;
  readonly ready: Extract<PreparedPaper, { readonly ok: true }>;
  readonly chosen: { readonly officerId: string; readonly reviewBy: string };
}

/** The paper as it is signed, and the signature under it. */
export function SignPaper({ view: { version, openStops }, ready, chosen }: SignPaperProps) {
  return (
    <>
      <Section id="the-paper" title="What you sign" aside={<a href="#sign">To the signature</a>}>
        <PaperSheet paper={ready.paper} label="The paper as you would sign it" />
      </Section>
      <Section id="sign" title="Your signature">
        {openStops.length === 0 ? null : <Notice kind="act" title={openStops.length === 1 ? 'One stop condition is open' : `${openStops.length} stop conditions are open`}><p>You can hand it over all the same. {ready.officer} cannot sign it before they are settled or, where that is allowed, accepted in writing.</p></Notice>}
        <ActionForm action={handOverAction} id="hand-over" faultsTitle="Not handed over yet">
          <FormHidden name="versionId" value={version.id} />
          <FormHidden name="officerId" value={chosen.officerId} />
          <FormHidden name="reviewBy" value={chosen.reviewBy} />
          <FormHidden name="seen" value={ready.seen} />
          <p>With your password you sign that what stands above is what you know and have seen. It goes to {ready.officer}; until it is returned, its answers do not change.</p>
          <FormPassword name="password" label="Your password" hint="Asked again, because it opens the key you sign with" autoComplete="current-password" />
          <p className="row"><FormSubmit>Sign and hand over</FormSubmit></p>
          <FormWaiting words="The paper is being made and signed. That takes some seconds; stay on this page." />
        </ActionForm>
      </Section>
    </>
  );
}
