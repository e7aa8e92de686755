import type { ReactNode } from 'react';

/** Why, sources, assumptions, history: beside the sheet, never anything one must act on. */
export function MarginNote({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="note">
      <h2>{title}</h2>
      {typeof children === 'string' ? <p>{children}</p> : children}
    </section>
  );
}
