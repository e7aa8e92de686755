'use client';

import type { ReactNode } from 'react';
import { Fieldset } from '../ui/fieldset';
import { useFormField } from './form-context';
import type { Option } from './form-fields';

interface FormChoicesProps {
  readonly name: string;
  readonly legend: ReactNode;
  readonly hint?: ReactNode;
  readonly options: readonly Option[];
  /** chosen before anything was sent; left out, nothing is */
  readonly value?: string;
}

/** One out of a few, a full-width row each. */
export function FormChoices({ name, legend, hint, options, value }: FormChoicesProps) {
  const { id, error, typed } = useFormField(name);
  const chosen = typed ?? value;
  return (
    <Fieldset id={id} legend={legend} hint={hint} error={error}>
      <div className="choices">
        {options.map((option) => <Row key={option.value} type="radio" name={name} option={option} chosen={option.value === chosen} />)}
      </div>
    </Fieldset>
  );
}

interface FormTicksProps extends Omit<FormChoicesProps, 'value'> { readonly values?: readonly string[] }

/** Any number of a few. The schema gets a list when two or more are ticked: read it with `listOf`. */
export function FormTicks({ name, legend, hint, options, values = [] }: FormTicksProps) {
  const { id, error, typedAll } = useFormField(name);
  const chosen = typedAll ?? values;
  return (
    <Fieldset id={id} legend={legend} hint={hint} error={error}>
      <div className="ticks">
        {options.map((option) => <Row key={option.value} type="checkbox" name={name} option={option} chosen={chosen.includes(option.value)} />)}
      </div>
    </Fieldset>
  );
}

interface RowProps { readonly type: 'radio' | 'checkbox'; readonly name: string; readonly option: Option; readonly chosen: boolean }

function Row({ type, name, option, chosen }: RowProps) {
  const input = <input type={type} name={name} value={option.value} defaultChecked={chosen} />;
  const hint = option.hint === undefined ? null : <span className="hint">{option.hint}</span>;
  if (type === 'radio') return <label className="choice">{input}<b>{option.label}</b>{hint}</label>;
  return <label className="check">{input}<span>{option.label}{hint}</span></label>;
}
