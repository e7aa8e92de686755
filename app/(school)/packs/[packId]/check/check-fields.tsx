'use client';

import type { ReactNode } from 'react';
import { FormChoices, FormTicks } from '@/app/_components/form/form-choices';
import { FormNumber } from '@/app/_components/form/form-fields';
import { Disclosure } from '@/app/_components/ui/disclosure';
import { cellField, type CheckTyped, DELIVERED_FIELD, FIRST_LOOK, HIT_FIELD, NOT_MEASURED_FIELD, RESISTANCE_FIELD, ROOM_TEMPERATURE_FIELD, type TemperatureUnit } from '@/lib/packs/checks/check-answers';
import type { CheckSheet, CheckSheetPage } from '@/lib/packs/checks/check-sheet';
import { AskRow } from './ask-row';

interface CheckFieldsProps {
  readonly page: CheckSheetPage;
  readonly sheet: CheckSheet;
  readonly unit: TemperatureUnit;
  readonly typed: CheckTyped;
  readonly register: ReactNode;
  readonly onAnswer: (name: string, answer: string) => void;
}

/** The fields of one page of a check. */
export function CheckFields(props: CheckFieldsProps) {
  switch (props.page.id) {
    case 'look':
    case 'listen': return <Questions {...props} />;
    case 'warmth': return <Warmth {...props} />;
    case 'record': return <Known {...props} />;
    case 'voltage': return <Voltage {...props} />;
  }
}

function Questions({ page, typed, onAnswer }: CheckFieldsProps) {
  return <div className="ask-list">{page.questions.map(({ name, ask }) => <AskRow key={name} name={name} ask={ask} value={typed[name]} more={name === 'warming' ? { value: FIRST_LOOK, word: 'First look' } : undefined} onAnswer={onAnswer} />)}</div>;
}

function Warmth(props: CheckFieldsProps) {
  const { sheet, unit, typed } = props;
  return (
    <>
      <FormNumber name="hoursSinceUse" label={sheet.asks['hoursSinceUse'] ?? ''} unit="h" hint="A quarter of an hour is 0.25. Leave empty when nobody knows." value={typed['hoursSinceUse']} />
      <Questions {...props} />
      <div className="two-up">
        <FormNumber name="packTemperature" label="By a thermometer: the pack" unit={unit} hint="Held near it. Leave both empty without one." value={typed['packTemperature']} />
        <FormNumber name={ROOM_TEMPERATURE_FIELD} label="The room" unit={unit} value={typed[ROOM_TEMPERATURE_FIELD]} />
      </div>
    </>
  );
}

function Known(props: CheckFieldsProps) {
  const { sheet, typed, register } = props;
  const hit = [{ value: 'no', label: 'Not in the last three days, as far as anybody knows' }, { value: 'hours', label: 'Yes' }, { value: 'not sure', label: 'Not sure', hint: 'Counts as hit within the hour' }];
  return (
    <>
      {register}
      <Questions {...props} />
      <FormChoices name={HIT_FIELD} legend="Was it hit, or in a crash?" options={hit} value={typed[HIT_FIELD]} />
      <FormNumber name="hoursSinceImpact" label="If so, how long ago?" unit="h" value={typed['hoursSinceImpact']} />
      <FormNumber name="hoursSinceCharge" label={sheet.asks['hoursSinceCharge'] ?? ''} unit="h" hint="Leave empty when nobody knows." value={typed['hoursSinceCharge']} />
      <FormNumber name="hoursFull" label={sheet.asks['hoursFull'] ?? ''} unit="h" hint="Leave empty when it is not full. Three days are 72." value={typed['hoursFull']} />
    </>
  );
}

function Voltage({ sheet, typed }: CheckFieldsProps) {
  return (
    <>
      <div className="two-up">
        {Array.from({ length: sheet.series }, (_, at) => <FormNumber key={at} name={cellField(at + 1)} label={`Cell ${at + 1}`} unit="V" hint={at === 0 ? '0 when the meter shows nothing' : undefined} value={typed[cellField(at + 1)]} />)}
      </div>
      <FormTicks name={NOT_MEASURED_FIELD} legend="No meter at hand?" options={[{ value: 'yes', label: 'The cells were not measured', hint: 'Then the check is not complete, and the pack waits' }]} values={typed[NOT_MEASURED_FIELD] === undefined ? [] : ['yes']} />
      <Disclosure summary="Wear, from the charger: not at every check">
        <div className="two-up">
          <FormNumber name={RESISTANCE_FIELD} label="Inner resistance of the worst cell" unit="mΩ" value={typed[RESISTANCE_FIELD]} />
          <FormNumber name={DELIVERED_FIELD} label="Charge it delivered, full to empty" unit="mAh" value={typed[DELIVERED_FIELD]} />
        </div>
      </Disclosure>
    </>
  );
}
