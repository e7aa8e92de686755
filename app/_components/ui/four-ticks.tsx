import type { ReactNode } from 'react';
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
  readonly onChange: (value: string, tick: FourTick) => void;
}

const CHOICES: readonly { readonly tick: FourTick; readonly word: string }[] = [
  { tick: 'yes', word: 'Yes' },
  { tick: 'partly', word: 'Partly' },
  { tick: 'no', word: 'No' },
  { tick: 'not sure', word: 'Not sure' },
];

/** Several things asked at once, each yes, partly, no or not sure. A blank row says that it is not answered. */
export function FourTicks({ id, legend, hint, error, rows, ticks, onChange }: FourTicksProps) {
  return (
    <Fieldset id={id} legend={legend} hint={hint} error={error}>
      <ul className="ticks">
        {rows.map((row) => <Line key={row.value} name={`${id}-${row.value}`} row={row} tick={ticks[row.value]} onChange={(tick) => onChange(row.value, tick)} />)}
      </ul>
    </Fieldset>
  );
}

interface LineProps { readonly name: string; readonly row: FourTickRow; readonly tick: FourTick | undefined; readonly onChange: (tick: FourTick) => void }

function Line({ name, row, tick, onChange }: LineProps) {
  const hints = `${row.hint === undefined ? '' : `${name}-hint`} ${tick === undefined ? `${name}-blank` : ''}`.trim();
  return (
    <li>
      <fieldset id={name} tabIndex={-1} className={tick === 'not sure' ? 'four-line unsure' : 'four-line'} aria-describedby={hints === '' ? undefined : hints}>
        <legend>{row.label}</legend>
        {row.hint === undefined ? null : <p className="hint" id={`${name}-hint`}>{row.hint}</p>}
        <div className="seg four">
          {CHOICES.map((choice) => (
            <label key={choice.tick}>
              <input type="radio" name={name} value={choice.tick} checked={tick === choice.tick} onChange={() => onChange(choice.tick)} />
              <span>{choice.word}</span>
            </label>
          ))}
        </div>
        {tick === undefined ? <p className="small muted blank" id={`${name}-blank`}>Not answered: counts as not sure.</p> : null}
      </fieldset>
    </li>
  );
}
