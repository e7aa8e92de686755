'use client';

import { useEffect, useRef } from 'react';
import { FormSubmit } from '@/app/_components/form/form-fields';
import { Button } from '@/app/_components/ui/button';
import type { CheckSheet } from '@/lib/packs/checks/check-sheet';

interface LeaveNowProps {
  readonly sheet: CheckSheet;
  /** the answer that was a sign */
  readonly sign: string;
  readonly onSlip: () => void;
}

/** In place of the form, the moment a sign is ticked that means leaving. Nothing more is asked. */
export function LeaveNow({ sheet, sign, onSlip }: LeaveNowProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const slip = (): void => {
    heading.current?.closest('form')?.querySelectorAll<HTMLInputElement>(`input[name="${sign}"]`).forEach((input) => { input.checked = false; });
    onSlip();
  };
  return (
    <section className="leave-now" aria-labelledby="leave-now">
      <h2 id="leave-now" ref={heading} tabIndex={-1}>{sheet.leave.title}</h2>
      <p>{sheet.leave.words}</p>
      <FormSubmit kind="now">What to do now</FormSubmit>
      <Button kind="plain" onClick={slip}>That was a slip of the finger: back to the check</Button>
    </section>
  );
}
