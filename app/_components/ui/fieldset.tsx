import type { ReactNode } from 'react';
import { FieldError } from './field';

interface FieldsetProps {
  /** an `ErrorSummary` links to it */
  readonly id: string;
  readonly legend: ReactNode;
  readonly hint?: ReactNode;
  readonly error?: string;
  readonly children: ReactNode;
}

/** A question with several controls; the legend is read out with each of them. */
export function Fieldset({ id, legend, hint, error, children }: FieldsetProps) {
  const hintId = hint === undefined ? '' : `${id}-hint`;
  const errorId = error === undefined ? '' : `${id}-error`;
  const describedBy = `${errorId} ${hintId}`.trim();
  return (
    <fieldset id={id} className={error === undefined ? 'field set' : 'field set bad'} aria-describedby={describedBy === '' ? undefined : describedBy} tabIndex={-1}>
      <legend>{legend}</legend>
      {hint === undefined ? null : <p className="hint" id={hintId}>{hint}</p>}
      {error === undefined ? null : <FieldError id={errorId}>{error}</FieldError>}
      {children}
    </fieldset>
  );
}
