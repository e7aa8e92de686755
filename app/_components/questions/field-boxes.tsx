import type { ReactNode } from 'react';
import type { NumberField } from '@/lib/content/model';
import type { EarlierFigure } from '@/lib/questionnaire/earlier-fields';

/** A time has two boxes under one name. */
export function FieldBoxes({ field, children }: { readonly field: NumberField; readonly children: ReactNode }) {
  if (field.entry !== 'minutes and seconds') return children;
  return <fieldset className="time-boxes"><legend>{field.label}</legend>{children}</fieldset>;
}

/** What to say of a figure that nobody asks for any more. */
export function earlierWords({ field, value, replacedBy }: EarlierFigure): string {
  const until = replacedBy.length === 0 ? '' : ` until you give ${replacedBy.map(({ label }) => label).join(', ')}`;
  return `From an earlier edition: ${field.label}, ${value} ${field.unit}. It still counts${until}.`;
}

/** What the box of a text question is called. */
export const TEXT_LABELS = { 'telephone number': 'Number', place: 'Place, in one line', any: 'In one line' } as const;
