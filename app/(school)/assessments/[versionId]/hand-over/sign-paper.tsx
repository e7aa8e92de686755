import { ReadAndSign } from '@/app/_components/paper/read-and-sign';
import { Notice } from '@/app/_components/ui/notice';
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
    <ReadAndSign
      paper={ready.paper} label="The paper as you would sign it" action={handOverAction} id="hand-over" faultsTitle="Not handed over yet"
      notice={openStops.length === 0 ? null : <Notice level={3} kind="act" title={openStops.length === 1 ? 'One stop condition is open' : `${openStops.length} stop conditions are open`}><p>You can hand it over all the same. {ready.officer} cannot sign it before they are settled or, where that is allowed, accepted in writing.</p></Notice>}
      carries={{ versionId: version.id, officerId: chosen.officerId, reviewBy: chosen.reviewBy, seen: ready.seen }}
      says={`With your password you sign that what stands above is what you know and have seen. It goes to ${ready.officer}; until it is returned, its answers do not change.`}
      submit="Sign and hand over" waiting="The paper is being made and signed. That takes some seconds; stay on this page."
    />
  );
}
