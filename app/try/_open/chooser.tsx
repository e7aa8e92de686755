import type { MouseEvent } from 'react';
import { examples, type Example } from './example-list';

interface ChooserProps {
  /** id of the example that is open */
  readonly here: string | null;
  readonly onChoose: (example: Example) => void;
}

/** The examples as plain links, so that they can be shared and work before any script has run. */
export function Chooser({ here, onChoose }: ChooserProps) {
  const choose = (event: MouseEvent, example: Example): void => {
    if (event.metaKey || event.ctrlKey || event.shiftKey || event.button !== 0) return;
    event.preventDefault();
    onChoose(example);
  };
  return (
    <ul className="rows examples">
      {examples.map((example) => (
        <li key={example.id}>
          <h3><a href={`/try?example=${example.id}`} aria-current={example.id === here ? 'true' : undefined} onClick={(event) => choose(event, example)}>{example.title}</a></h3>
          <p className="small muted">{example.about}</p>
        </li>
      ))}
    </ul>
  );
}
