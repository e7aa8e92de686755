import type { ReactNode } from 'react';

/** know: plain; act: a person is needed now; done: settled; not sure: on sand. */
export type NoticeKind = 'know' | 'act' | 'done' | 'not sure';

interface NoticeProps {
  readonly kind?: NoticeKind;
  readonly title: string;
  /** The level its heading has where it stands: one below the heading it stands under. */
  readonly level: 2 | 3;
  readonly children?: ReactNode;
}

export function Notice({ kind = 'know', title, level, children }: NoticeProps) {
  const Heading = level === 2 ? 'h2' : 'h3';
  const look = { know: '', act: ' now', done: ' done', 'not sure': ' unsure' }[kind];
  return (
    <div className={`notice${look}`}>
      <Heading>{title}</Heading>
      {typeof children === 'string' ? <p>{children}</p> : children}
    </div>
  );
}

export interface Stop { readonly id: string; readonly title: string; readonly why: string; /** a line of its own under the reason */ readonly note?: ReactNode; readonly action?: ReactNode }

/** Stop conditions that hold: what presses most on any screen. */
export function StopList({ stops }: { readonly stops: readonly Stop[] }) {
  return (
    <ul className="stops">
      {stops.map((stop) => (
        <li key={stop.id} id={`stop-${stop.id}`}>
          <h3>{stop.title}</h3>
          <p>{stop.why}</p>
          {stop.note}
          {stop.action === undefined ? null : <div className="row">{stop.action}</div>}
        </li>
      ))}
    </ul>
  );
}
