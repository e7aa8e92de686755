'use client';

import { FormSubmit } from '@/app/_components/form/form-fields';
import type { AskedQuestion } from '@/lib/assessments/asked-question';

/** What the school has written down elsewhere about this question: confirmed by saving, told, or other than what was answered. */
export function RegisterNote({ asked: { question, register } }: { readonly asked: AskedQuestion }) {
  if (register === null) return null;
  const { standing, where, words } = register;
  switch (standing) {
    case 'to confirm': return <p className="from-register"><b>From the register</b> ({where}): {words}. It is filled in; saving says that it is right.</p>;
    case 'as answered': return <p className="small muted">As in the register ({where}).</p>;
    case 'told':
    case 'differs': return (
      <div className="from-register">
        <p><b>{standing === 'told' ? 'The register says' : 'The register says something else'}</b> ({where}): {words}.</p>
        <p><FormSubmit kind="outline" size="small" name="take" value={question.id}>Take that<span className="vh">: {question.text}</span></FormSubmit></p>
      </div>
    );
  }
}
