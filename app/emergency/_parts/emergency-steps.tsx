import { type FilledGuidance, type GuidanceWords, placeholdersOf } from '@/lib/content/fill-guidance';
import type { GuidanceText } from '@/lib/content/model';
import { CallBox } from './call-box';
import { WithNumbers } from './with-numbers';

interface EmergencyStepsProps {
  readonly text: GuidanceText;
  readonly filled: FilledGuidance;
  readonly words: GuidanceWords;
}

/** The fields that are dialled, with what their button says. */
const DIALLED = [{ field: 'number', verb: 'Call' }, { field: 'officerPhone', verb: 'Telephone' }] as const;

/** The lines of one text, numbered. The first line that names a number has it under it, large. */
export function EmergencySteps({ text, filled, words }: EmergencyStepsProps) {
  const numbers = DIALLED.filter(({ field }) => words[field].set).map(({ field }) => words[field].words);
  return (
    <ol className="steps">
      {filled.lines.map((line, index) => (
        <li key={line.lead}>
          <p><b><WithNumbers text={line.lead} numbers={numbers} /></b>{line.text === undefined ? null : <> <WithNumbers text={line.text} numbers={numbers} /></>}</p>
          {DIALLED.filter(({ field }) => words[field].set && index === firstWith(text, field)).map(({ field, verb }) => <CallBox key={field} verb={verb} number={words[field].words} />)}
        </li>
      ))}
    </ol>
  );
}

function firstWith({ lines }: GuidanceText, field: string): number {
  return lines.findIndex((line) => placeholdersOf(line).includes(field));
}
