import type { ReactNode } from 'react';
import { Fieldset } from './fieldset';

export type Tick = 'yes' | 'not sure' | 'no';
export interface TickRow { readonly value: string; readonly label: string; readonly hint?: string }

interface MultiTicksProps {
  readonly id: string;
  readonly legend: ReactNode;
  readonly hint?: ReactNode;
  readonly error?: string;
  readonly rows: readonly TickRow[];
  /** a row that is missing here is not answered, which is not the same as no */
  readonly ticks: Readonly<Record<string, Tick>>;
  readonly onChange: (value: string, tick: Tick) => void;
}

const CHOICES: readonly { readonly tick: Tick; readonly word: string }[] = [
  { tick: 'yes', word: 'Yes' },
  { tick: 'no', word: 'No' },
  { tick: 'not sure', word: 'Not sure' },
];

/** Several things asked at once, each yes, no or not sure. A blank row stays visible as not answered. */
export function MultiTicks({ id, legend, hint, error, rows, ticks, onChange }: MultiTicksProps) {
  return (
    <Fieldset id={id} legend={legend} hint={hint} error={error}>
      <ul className="ticks">
        {rows.map((row) => <TickLine key={row.value} name={`${id}-${row.value}`} row={row} tick={ticks[row.value]} onChange={(tick) => onChange(row.value, tick)} />)}
      </ul>
    </Fieldset>
  );
}

interface TickLineProps { readonly name: string; readonly row: TickRow; readonly tick: Tick | undefined; readonly onChange: (tick: Tick) => void }

function TickLine({ name, row, tick, onChange }: TickLineProps) {
  return (
    <li className={tick === 'not sure' ? 'tick-line unsure' : 'tick-line'}>
      <span id={`${name}-label`} className="tick-label">{row.label}{row.hint === undefined ? null : <span className="hint">{row.hint}</span>}</span>
      <span className="seg" role="radiogroup" aria-labelledby={`${name}-label`}>
        {CHOICES.map((choice) => (
          <label key={choice.tick}>
            <input type="radio" name={name} value={choice.tick} checked={tick === choice.tick} onChange={() => onChange(choice.tick)} />
            <span>{choice.word}</span>
          </label>
        ))}
      </span>
    </li>
  );
}
