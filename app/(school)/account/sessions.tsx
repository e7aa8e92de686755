import type { SignedInBrowser } from '@/lib/server/auth/sessions';

interface SessionsProps {
  readonly sessions: readonly SignedInBrowser[];
  readonly locale: string;
  readonly timeZone: string;
}

export function Sessions({ sessions, locale, timeZone }: SessionsProps) {
  const format = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short', timeZone });
  return (
    <ul className="rows">
      {sessions.map((session) => (
        <li key={session.id}>
          <h3>{session.browser ?? 'A browser that does not say what it is'}{session.isThis ? ', this one' : ''}</h3>
          <p className="small muted">Since <time dateTime={session.since.toISOString()}>{format.format(session.since)}</time>, at most until <time dateTime={session.until.toISOString()}>{format.format(session.until)}</time></p>
        </li>
      ))}
    </ul>
  );
}
