import { Section } from '@/app/_components/ui/section';
import { Table } from '@/app/_components/ui/table';
import { countWords, type Session, totalsOf } from '@/lib/sessions/session';
import { foundWords } from '@/lib/sessions/session-list';
import { type DateStyle, momentWords } from '@/lib/wording/dates';

/** What was logged. */
export function CountsPart({ session, style }: { readonly session: Session; readonly style: DateStyle }) {
  const { charges, crashes } = totalsOf(session);
  const end = session.endedAt === null ? '' : ` Closed ${momentWords(session.endedAt, style)}: ${foundWords(session)}.`;
  return (
    <Section id="counts" title="Logged" aside={`${countWords(charges, 'charge')}, ${crashes === null ? 'crashes not logged' : countWords(crashes, 'crash')}`}>
      <p>{session.peoplePresent === null ? 'Nobody was counted.' : `${session.peoplePresent} people in the room.`}{end} {session.note}</p>
      {session.packs.length === 0 ? <p className="muted">No pack yet.</p> : (
        <Table
          caption="Packs of the session"
          columns={[
            { head: 'Pack', cell: ({ label }) => label },
            { head: 'Charges', numeric: true, cell: ({ charges: count }) => String(count) },
            { head: 'Crashes', numeric: true, cell: ({ crashes: count }) => count ?? '' },
          ]}
          rows={session.packs}
          rowKey={({ packId }) => packId}
        />
      )}
    </Section>
  );
}
