'use client';

import { useEffect } from 'react';
import { forgetTyping, keptTyping, keepTyping, readFields, writeFields } from '../_parts/kept-typing';

interface KeepTypedProps {
  readonly formId: string;
  readonly personId: string;
  /** somebody asked for an empty form */
  readonly fresh: boolean;
}

/** Keeps what is typed into the form on this device, and puts it back after a reload. The record takes it away. */
export function KeepTyped({ formId, personId, fresh }: KeepTypedProps) {
  useEffect(() => {
    const form = document.getElementById(formId);
    if (!(form instanceof HTMLFormElement)) return;
    if (fresh) forgetOnce(personId);
    const kept = keptTyping(personId);
    if (kept !== null) writeFields(form, kept.fields);
    const keep = () => keepTyping(personId, readFields(form));
    form.addEventListener('input', keep);
    return () => form.removeEventListener('input', keep);
  }, [formId, personId, fresh]);
  return null;
}

/** The address says it once: after a reload, what was typed since is there. */
function forgetOnce(personId: string): void {
  if (window.location.search === '') return;
  forgetTyping(personId);
  window.history.replaceState(null, '', window.location.pathname);
}
