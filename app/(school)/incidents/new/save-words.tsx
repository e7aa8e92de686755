'use client';

import { Fragment, useEffect, useState } from 'react';

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
  if (labels.length > 4) return `Save. Mark ${labels.length} packs isolated`;
  return <span>Save. Mark {labels.map((label, index) => <Fragment key={label}>{index === 0 ? '' : ', '}<span className="nowrap">{label}</span></Fragment>)} isolated</span>;
}

function labelsIn(form: FormData): readonly string[] {
  const texts = (name: string) => form.getAll(name).filter((value) => typeof value === 'string');
  const typed = ['involvedTyped', 'nearbyTyped'].flatMap((name) => texts(name).flatMap((text) => text.split(/[,;\n]/)));
  const all = [...texts('involved'), ...texts('nearby'), ...typed].map((label) => label.trim()).filter((label) => label !== '');
  return [...new Map(all.map((label) => [label.toLowerCase(), label])).values()];
}
