import { Disclosure } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { CHECK_GROUPS, GROUP_TITLES } from '@/lib/events/check/line';
import type { JudgedLine } from '@/lib/events/check/check-event';
import type { EventView } from '@/lib/server/events/event-view';
import { OpenLine } from './open-line';

/** The check before it leaves: what is open first, by part; what passes behind a fold. */
export function CheckPart({ view }: { readonly view: EventView }) {
  const { lines, open } = view;
  const passed = lines.filter(({ id }) => open.every((line) => line.id !== id));
  return (
    <Section id="check" title="Check before it leaves" aside={open.length === 0 ? `All ${lines.length} lines pass` : `${open.length} open of ${lines.length}`}>
      {CHECK_GROUPS.map((group) => {
        const found = open.filter((line) => line.group === group);
        return found.length === 0 ? null : (
          <div key={group} className="check-group">
            <h3>{GROUP_TITLES[group]}</h3>
            <ul className="check-lines">{found.map((line) => <OpenLine key={line.id} line={line} eventId={view.event.id} mayMend={view.may.change} mayAccept={view.may.accept} />)}</ul>
          </div>
        );
      })}
      <Disclosure summary={passed.length === 1 ? 'One line that passes' : `${passed.length} lines that pass`}>
        <ul className="check-lines passed">{passed.map((line) => <PassedLine key={line.id} line={line} />)}</ul>
      </Disclosure>
    </Section>
  );
}

function PassedLine({ line: { words, accepted } }: { readonly line: JudgedLine }) {
  if (accepted === null) return <li><span className="mark-word">Passes</span> {words}</li>;
  return <li><span className="mark-word">Let stand</span> {words} <span className="under small">{accepted.byName}: {accepted.reason}</span></li>;
}
