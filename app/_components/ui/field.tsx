import type { ReactNode } from 'react';
import { Icon } from './icon';

/** What every control under a label needs to be tied to it. */
export interface FieldAttributes {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': true | undefined;
}

interface FieldProps {
  readonly id: string;
  readonly label: string;
  readonly hint?: ReactNode;
  readonly error?: string;
  /** stands outside the box, after it */
  readonly unit?: string;
  readonly children: (attributes: FieldAttributes) => ReactNode;
}

/** Label, control, unit, hint and error, tied together by id. The ids are those an `ErrorSummary` links to. */
export function Field({ id, label, hint, error, unit, children }: FieldProps) {
  const hintId = hint === undefined ? '' : `${id}-hint`;
  const errorId = error === undefined ? '' : `${id}-error`;
  const describedBy = `${errorId} ${hintId}`.trim();
  const control = children({ id, 'aria-describedby': describedBy === '' ? undefined : describedBy, 'aria-invalid': error === undefined ? undefined : true });
  return (
    <div className={error === undefined ? 'field' : 'field bad'}>
      <label htmlFor={id}>{label}</label>
      {unit === undefined ? control : <span className="with-unit">{control}<span className="unit">{unit}</span></span>}
      {error === undefined ? null : <FieldError id={errorId}>{error}</FieldError>}
      {hint === undefined ? null : <p className="hint" id={hintId}>{hint}</p>}
    </div>
  );
}

/** An error in words, under its control. */
export function FieldError({ id, children }: { readonly id: string; readonly children: string }) {
  return <p className="err" id={id}><Icon name="bang" /><span>{children}</span></p>;
}
