'use client';

import { useEffect } from 'react';
import { forgetTyping } from '../../_parts/kept-typing';

/** The record is kept by the school now; this device need not keep what was typed. */
export function ForgetTyped({ personId }: { readonly personId: string }) {
  useEffect(() => forgetTyping(personId), [personId]);
  return null;
}
