'use client';

import { useEffect } from 'react';
import { type Kept, keptTyping, keepTyping, readFields, writeFields } from '../_parts/kept-typing';

/** Keeps what is typed into the form on this device, and puts it back after a reload. The record takes it away. */
export function KeepTyped({ formId, personId }: { readonly formId: string; readonly personId: string }) {
  useEffect(() => {
    const form = document.getElementById(formId);
    if (!(form instanceof HTMLFormElement)) return;
    const kept: Kept | null = keptTyping(personId);
    if (kept !== null) writeFields(form, kept.fields);
    const keep = () => keepTyping(personId, readFields(form));
    form.addEventListener('input', keep);
    return () => form.removeEventListener('input', keep);
  }, [formId, personId]);
  return null;
}
