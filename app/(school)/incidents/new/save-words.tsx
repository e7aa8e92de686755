'use client';

import { useEffect, useState } from 'react';

/** What the button does, with the labels that stand in the form; without a script, in general words. */
export function SaveWords({ formId }: { readonly formId: string }) {
  const [labels, setLabels] = useState<readonly string[]>([]);
  useEffect(() => {
    const form = document.getElementById(formId);
    if (!(form instanceof HTMLFormElement)) return;
    const read = () => setLabels(labelsIn(new FormData(form)));
    // After the fields were put back from this device.
    const first = requestAnimationFrame(read);
    form.addEventListener('input', read);
    return () => { cancelAnimationFrame(first); form.removeEventListener('input', read); };
  }, [formId]);
  if (labels.length === 0) return 'Save it';
  return labels.length > 4 ? `Save. Mark ${labels.length} packs isolated` : `Save. Mark ${labels.join(', ')} isolated`;
}

function labelsIn(form: FormData): readonly string[] {
  const texts = (name: string) => form.getAll(name).filter((value) => typeof value === 'string');
  const typed = ['involvedTyped', 'nearbyTyped'].flatMap((name) => texts(name).flatMap((text) => text.split(/[,;\n]/)));
  const all = [...texts('involved'), ...texts('nearby'), ...typed].map((label) => label.trim()).filter((label) => label !== '');
  return [...new Map(all.map((label) => [label.toLowerCase(), label])).values()];
}
