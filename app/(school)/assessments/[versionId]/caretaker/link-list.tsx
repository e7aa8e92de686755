import { CopyLink } from '@/app/_components/ui/copy-link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormSubmit } from '@/app/_components/form/form-fields';
import type { SentLink } from '@/lib/server/assessments/send-questions';
import { takeLinkBackAction } from './actions';

/** The links of a version: what became of each, and the link itself while it works. */
export function LinkList({ links, versionId }: { readonly links: readonly SentLink[]; readonly versionId: string }) {
  return (
    <ul className="rows links">
      {links.map((link) => (
        <li key={link.id}>
          <h3>{link.forWhom}</h3>
          <p className="small muted">{link.questions === 1 ? 'One question' : `${link.questions} questions`}, sent by {link.byName}; {link.ended ?? `works until ${link.until}`}. {link.answered === null ? 'Not answered yet.' : `Answered: ${link.answered}.`}</p>
          {link.address === null ? null : (
            <>
              <CopyLink label={`Link for ${link.forWhom}`} address={link.address} />
              <ActionForm action={takeLinkBackAction} id={`take-${link.id}`}>
                <FormHidden name="versionId" value={versionId} />
                <FormHidden name="linkId" value={link.id} />
                <p className="row"><FormSubmit kind="outline" size="small">Take it back<span className="vh">: the link for {link.forWhom}</span></FormSubmit></p>
              </ActionForm>
            </>
          )}
        </li>
      ))}
    </ul>
  );
}
