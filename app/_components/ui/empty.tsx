import type { ReactNode } from 'react';

/** What stands where there is nothing yet: it says the next step. */
export function Empty({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <div className="empty">
      <h3>{title}</h3>
      {children}
    </div>
  );
}
