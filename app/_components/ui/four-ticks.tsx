import type { ReactNode } from 'react';
import { FieldError } from './field';
import { Fieldset } from './fieldset';

export type FourTick = 'yes' | 'partly' | 'no' | 'not sure';
export interface FourTickRow {
  readonly value: string;
  readonly label: string;
  /** what "partly" means on this line, and anything else said of it */
  readonly hint?: ReactNode;
}

interface FourTicksProps {
  readonly id: string;
  readonly legend: ReactNode;
  readonly hint?: ReactNode;
  readonly error?: string;
  readonly rows: readonly FourTickRow[];
  /** a row that is missing here is not answered, which is not the same as no */
  readonly ticks: Readonly<Record<string, FourTick>>;
  /** left out in a form that is sent: the browser keeps what is chosen, also without script */
  readonly onChange?: (value: string, tick: FourTick) => void;
  /** id and name of a row's inputs; made of the id and the row where it is left out */
  readonly fieldOf?: (value: string) => { readonly id: string; readonly name: string; readonly error?: string };
}

const CHOICES: readonly { readonly tick: FourTick; readonly word: string }[] = [
  { tick: 'yes', word: 'Yes' },
  { tick: 'partly', word: 'Partly' },
  { tick: 'no', word: 'No' },
  { tick: 'not sure', word: 'Not sure' },
];

/** Several things asked at once, each yes, partly, no or not sure. A blank row says that it is not answered. */
export function FourTicks({ id, legend, hint, error, rows, ticks, onChange, fieldOf = (row) => ({ id: `${id}-${row}`, name: `${id}-${row}` }) }: FourTicksProps) {
  return (
    <Fieldset id={id} legend={legend} hint={hint} error={error}>
      <ul className="ticks">
        {rows.map((row) => <Line key={row.value} {...fieldOf(row.value)} row={row} tick={ticks[row.value]} onChange={onChange === undefined ? undefined : (tick) => onChange(row.value, tick)} />)}
      </ul>
    </Fieldset>
  );
}

interface LineProps { readonly id: string; readonly name: string; readonly error?: string; readonly row: FourTickRow; readonly tick: FourTick | undefined; readonly onChange?: (tick: FourTick) => void }

function Line({ id, name, error, row, tick, onChange }: LineProps) {
  const hints = [error === undefined ? '' : `${id}-error`, row.hint === undefined ? '' : `${id}-hint`, tick === undefined ? `${id}-blank` : ''].filter((hint) => hint !== '').join(' ');
  return (
    <li>
      <fieldset id={id} tabIndex={-1} className={tick === 'not sure' ? 'four-line unsure' : 'four-line'} aria-describedby={hints === '' ? undefined : hints}>
        <legend>{row.label}</legend>
        {row.hint === undefined ? null : <p className="hint" id={`${id}-hint`}>{row.hint}</p>}
        {error === undefined ? null : <FieldError id={`${id}-error`}>{error}</FieldError>}
        <div className="seg four">
          {CHOICES.map((choice) => (
            <label key={choice.tick}>
              <input type="radio" name={name} value={choice.tick} {...(onChange === undefined ? { defaultChecked: tick === choice.tick } : { checked: tick === choice.tick, onChange: () => onChange(choice.tick) })} />
              <span>{choice.word}</span>
            </label>
          ))}
        </div>
        {tick === undefined ? <p className="small muted blank" id={`${id}-blank`}>Not answered: counts as not sure.</p> : null}
      </fieldset>
    </li>
  );
}
