'use client';

import { use } from 'react';
import { FormContext } from './form-context';

/** Says what is being done while the form is on its way; heard by those who do not see the button turn. */
export function FormWaiting({ words }: { readonly words: string }) {
  const { pending } = use(FormContext);
  return <p role="status" className="small muted">{pending ? words : ''}</p>;
}
