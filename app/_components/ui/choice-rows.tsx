import type { ReactNode } from 'react';
import { Fieldset } from './fieldset';

/** The value of the row that is always last. Interchange writes the same words. */
const NOT_SURE = 'not sure';

export interface Choice {
  readonly value: string;
  readonly label: string;
  readonly hint?: string;
  /** this row is what good looks like, and says so */
  readonly good?: boolean;
  /** why it cannot be chosen here */
  readonly unavailable?: string;
}

interface ChoiceRowsProps {
  /** also the id that an `ErrorSummary` links to, and the `name` of the inputs where none is given */
  readonly id: string;
  readonly name?: string;
  readonly legend: ReactNode;
  readonly hint?: ReactNode;
  readonly error?: string;
  readonly choices: readonly Choice[];
  /** null: nothing chosen yet; nothing is ever preselected */
  readonly value: string | null;
  /** left out in a form that is sent: the browser keeps what is chosen, also without script */
  readonly onChange?: (value: string) => void;
  /** false when the question cannot be answered with "not sure" */
  readonly notSure?: boolean;
  readonly notSureHint?: string;
}

/** One answer out of several, a full-width row each; `Not sure` last, solid, with sand grain at its left edge. */
export function ChoiceRows({ id, name = id, legend, hint, error, choices, value, onChange, notSure = true, notSureHint }: ChoiceRowsProps) {
  const rows: readonly Choice[] = notSure ? [...choices, { value: NOT_SURE, label: 'Not sure', hint: notSureHint }] : choices;
  return (
    <Fieldset id={id} legend={legend} hint={hint} error={error}>
      <div className="choices">
        {rows.map((row) => <ChoiceRow key={row.value} name={name} choice={row} chosen={row.value === value} onChoose={onChange === undefined ? undefined : () => onChange(row.value)} />)}
      </div>
    </Fieldset>
  );
}

interface ChoiceRowProps { readonly name: string; readonly choice: Choice; readonly chosen: boolean; readonly onChoose?: () => void }

function ChoiceRow({ name, choice, chosen, onChoose }: ChoiceRowProps) {
  const hint = choice.unavailable ?? choice.hint;
  return (
    <label className={`choice${chosen && onChoose !== undefined ? ' chosen' : ''}${choice.value === NOT_SURE ? ' unsure' : ''}${choice.good === true ? ' good' : ''}`}>
      <input type="radio" name={name} value={choice.value} {...(onChoose === undefined ? { defaultChecked: chosen } : { checked: chosen, onChange: onChoose })} disabled={choice.unavailable !== undefined} />
      <b>{choice.label}</b>
      {hint === undefined ? null : <span className="hint">{hint}</span>}
    </label>
  );
}
