'use client';

import { useEffect, useRef } from 'react';

export interface FieldFault {
  /** id of the field; null when the fault belongs to no field on the page */
  readonly field: string | null;
  readonly message: string;
}

interface ErrorSummaryProps {
  readonly title: string;
  readonly faults: readonly FieldFault[];
  /** changes with each attempt, so that focus comes back to the summary each time */
  readonly attempt?: number;
}

/** Every fault of a page, on top. Takes focus when it appears; each line goes to its field. */
export function ErrorSummary({ title, faults, attempt = 0 }: ErrorSummaryProps) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => { box.current?.focus(); }, [attempt]);
  return (
    <div className="errors" role="alert" tabIndex={-1} ref={box} aria-labelledby="error-summary-title">
      <h2 id="error-summary-title">{title}</h2>
      <ul>
        {faults.map((fault) => (
          <li key={`${fault.field ?? ''} ${fault.message}`}>
            {fault.field === null ? fault.message : <a href={`#${fault.field}`} onClick={(event) => { if (goToField(fault.field)) event.preventDefault(); }}>{fault.message}</a>}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Focuses the field and brings its label or legend into view first, so that it is known what is asked. */
function goToField(id: string | null): boolean {
  const target = id === null ? null : document.getElementById(id);
  if (target === null) return false;
  const label = target.closest('fieldset')?.querySelector('legend') ?? document.querySelector(`label[for="${CSS.escape(target.id)}"]`) ?? target;
  label.scrollIntoView();
  const focusable = target.matches('fieldset') ? target.querySelector<HTMLElement>('input, select, textarea') ?? target : target;
  focusable.focus({ preventScroll: true });
  return true;
}
