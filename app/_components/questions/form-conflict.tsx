'use client';

import { use } from 'react';
import { FormContext } from '@/app/_components/form/form-context';
import { conflictsIn, type ConflictShown } from '@/lib/assessments/conflict';
import { keepField } from '@/lib/assessments/page-fields';

/** Two people answered one question at once: both answers side by side, and the choice which of them stands. */
export function FormConflict({ question }: { readonly question: string }) {
  const { state, prefix } = use(FormContext);
  const conflict = conflictsIn(state.data).find(({ field }) => field === question);
  if (conflict === undefined) return null;
  const name = keepField(question);
  return (
    <fieldset className="notice now both" id={`${prefix}-${name}`}>
      <legend>{conflict.byName} answered this while you were at it{conflict.at === '' ? '' : `, ${conflict.at}`}. Which answer stands?</legend>
      <div className="choices">
        <Side name={name} value="theirs" title={`That of ${conflict.byName}`} side={conflict.theirs} />
        <Side name={name} value={`mine-${conflict.revision}`} title="Mine, as it stands below" side={conflict.mine} />
      </div>
    </fieldset>
  );
}

interface SideProps { readonly name: string; readonly value: string; readonly title: string; readonly side: ConflictShown['theirs'] }

function Side({ name, value, title, side }: SideProps) {
  return (
    <label className="choice">
      <input type="radio" name={name} value={value} />
      <b>{title}</b>
      <span className="hint">{side.words}{side.note === '' ? '' : ` (note: ${side.note})`}</span>
    </label>
  );
}
