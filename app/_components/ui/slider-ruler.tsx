import type { CSSProperties } from 'react';

/** More ticks than this run together. */
const MOST_TICKS = 30;

interface SliderRulerProps {
  readonly id: string;
  readonly label: string;
  readonly labelShown?: boolean;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly value: number;
  /** words under the ruler, spread evenly from its least to its most */
  readonly marks: readonly string[];
  /** the value and what it brings, in words, for those who hear it */
  readonly valueText: string;
  readonly describedBy?: string;
  readonly onChange: (value: number) => void;
}

/** A slider drawn as the ruler it is: a ticked line and an ink pointer. Shares its scale with the chart above it. */
export function SliderRuler({ id, label, labelShown = false, min, max, step, value, marks, valueText, describedBy, onChange }: SliderRulerProps) {
  const steps = Math.round((max - min) / step);
  const ticks = { '--ticks': steps > 0 && steps <= MOST_TICKS ? steps : 20 } as CSSProperties;
  return (
    <div className="ruler-in">
      <label htmlFor={id} className={labelShown ? 'legend' : 'vh'}>{label}</label>
      <input id={id} type="range" style={ticks} min={min} max={max} step={step} value={value} aria-valuetext={valueText} aria-describedby={describedBy} onChange={(event) => onChange(event.currentTarget.valueAsNumber)} />
      <div className="marks" aria-hidden="true">{marks.map((mark) => <span key={mark}>{mark}</span>)}</div>
    </div>
  );
}
