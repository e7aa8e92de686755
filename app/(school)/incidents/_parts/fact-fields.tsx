import { FormTicks } from '@/app/_components/form/form-choices';
import { FormCheck } from '@/app/_components/form/form-check';
import { FormLine, FormSelect, FormText } from '@/app/_components/form/form-fields';
import { FormSegment } from '@/app/_components/form/form-segment';
import type { Typed } from '@/lib/forms/form-state';
import { CALLED, CONTACTED, DOINGS, KINDS, YES_NO } from '@/lib/incidents/choices';
import type { FactName } from '@/lib/incidents/facts';
import type { IncidentChoices } from '@/lib/server/incidents/incident-form';
import { PackFields } from './pack-fields';
import { all, one, options } from './typed';

interface FactFieldsProps {
  readonly name: FactName;
  /** what stands in the fields before anything is typed */
  readonly typed: Typed;
  readonly choices: IncidentChoices;
  readonly timeZone: string;
}

/** The fields one fact is asked with, the same for a new record and for a correction. Nothing is preselected. */
export function FactFields({ name, typed, choices, timeZone }: FactFieldsProps) {
  switch (name) {
    case 'called': return <FormTicks name="called" legend="Was anybody called or warned?" values={all(typed, 'called')} options={options(CALLED)} />;
    case 'hurt': return <FormSegment name="hurt" legend="Was anybody hurt?" value={one(typed, 'hurt')} options={options(YES_NO)} />;
    case 'breathed': return <FormSegment name="breathed" legend="Did anybody breathe smoke?" hint="Then that person sees a doctor the same day, even if well." value={one(typed, 'breathed')} options={options(YES_NO)} />;
    case 'kinds': return <div className="kinds"><FormTicks name="kinds" legend="What was it?" hint="Tick all that is true." values={all(typed, 'kinds')} options={options(KINDS)} /></div>;
    case 'packs': return <PackFields typed={typed} labels={choices.packLabels} />;
    case 'when': return <WhenFields typed={typed} timeZone={timeZone} />;
    case 'where': return <WhereFields typed={typed} choices={choices} />;
    case 'doing': return <FormSelect name="doing" label="What was going on?" value={one(typed, 'doing') ?? ''} options={[{ value: '', label: 'Choose, or “Not sure”' }, ...options(DOINGS)]} />;
    case 'whatHappened': return <FormText name="whatHappened" label="In a few words (may stay empty)" hint="Roles and initials only, no names." rows={3} value={one(typed, 'whatHappened')} />;
    case 'firstAid': return <FormText name="firstAid" label="First aid that was given (may stay empty)" rows={2} value={one(typed, 'firstAid')} />;
    case 'whatWasDone': return <FormText name="whatWasDone" label="What else was done (may stay empty)" rows={2} value={one(typed, 'whatWasDone')} />;
    case 'contacted': return <FormTicks name="contacted" legend="Who was told afterwards?" values={all(typed, 'contacted')} options={options(CONTACTED)} />;
  }
}

function WhenFields({ typed, timeZone }: Pick<FactFieldsProps, 'typed' | 'timeZone'>) {
  return (
    <div className="stack">
      <FormLine name="when" label="When" type="datetime-local" hint={`Now, unless you change it. Time at ${timeZone.replaceAll('_', ' ')}.`} value={one(typed, 'when')} />
      <FormCheck name="guessed" value="yes" label="The time is a guess" checked={one(typed, 'guessed') === 'yes'} />
    </div>
  );
}

function WhereFields({ typed, choices }: Pick<FactFieldsProps, 'typed' | 'choices'>) {
  return (
    <div className="stack">
      <FormSelect name="where" label="Where" value={one(typed, 'where') ?? ''} options={[{ value: '', label: 'Choose a place' }, ...choices.places]} />
      <FormLine name="place" label="More about the place (may stay empty)" autoComplete="off" value={one(typed, 'place')} />
    </div>
  );
}
