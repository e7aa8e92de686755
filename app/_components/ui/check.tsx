import type { ReactNode } from 'react';

interface CheckProps {
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
  readonly describedBy?: string;
  readonly children: ReactNode;
}

/** One thing to tick, its words beside it and as tall as a thumb. */
export function Check({ checked, onChange, describedBy, children }: CheckProps) {
  return (
    <label className="check">
      <input type="checkbox" checked={checked} aria-describedby={describedBy} onChange={(event) => onChange(event.currentTarget.checked)} />
      <span>{children}</span>
    </label>
  );
}
