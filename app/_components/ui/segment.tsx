import { Fieldset } from './fieldset';

interface SegmentProps<Value extends string> {
  readonly id: string;
  readonly legend: string;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly value: Value | null;
  readonly onChange: (value: Value) => void;
}

/** A few short answers in one line. */
export function Segment<Value extends string>({ id, legend, options, value, onChange }: SegmentProps<Value>) {
  return (
    <Fieldset id={id} legend={legend}>
      <div className="seg">
        {options.map((option) => (
          <label key={option.value}>
            <input type="radio" name={id} value={option.value} checked={option.value === value} onChange={() => onChange(option.value)} />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </Fieldset>
  );
}
