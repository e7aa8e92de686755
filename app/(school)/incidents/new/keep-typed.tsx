'use client';

import { useEffect } from 'react';
import { forgetTyping, keptTyping, keepTyping, readFields, writeFields } from '../_parts/kept-typing';

interface KeepTypedProps {
  readonly formId: string;
  readonly personId: string;
  /** stands in the address when somebody asked for an empty form, each time another */
  readonly emptied: string | null;
}

/** Keeps what is typed into the form on this device, and puts it back after a reload. The record takes it away. */
export function KeepTyped({ formId, personId, emptied }: KeepTypedProps) {
  useEffect(() => {
    const form = document.getElementById(formId);
    if (!(form instanceof HTMLFormElement)) return;
    if (emptied !== null) forgetOnce(personId, emptied);
    const kept = keptTyping(personId);
    if (kept !== null) writeFields(form, kept.fields);
    const keep = () => keepTyping(personId, readFields(form));
    form.addEventListener('input', keep);
    return () => form.removeEventListener('input', keep);
  }, [formId, personId, emptied]);
  return null;
}

const EMPTIED = 'sandbucket.incident.emptied';

/** Once for each time it was asked: after a reload, what was typed since is there. */
function forgetOnce(personId: string, emptied: string): void {
  if (sessionStorage.getItem(EMPTIED) === emptied) return;
  sessionStorage.setItem(EMPTIED, emptied);
  forgetTyping(personId);
}
