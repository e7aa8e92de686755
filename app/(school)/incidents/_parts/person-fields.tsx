import { FormLine, FormSelect } from '@/app/_components/form/form-fields';
import type { Typed } from '@/lib/forms/form-state';
import { AFFECTED_ROLES, YES_NO } from '@/lib/incidents/choices';
import { PERSON_ROWS } from '@/lib/incidents/read-persons';
import { one, options } from './typed';

const NOBODY = { value: '', label: 'Nobody' };
const CHOOSE = { value: '', label: 'Choose' };

/** People who were affected: roles and initials, never names. */
export function PersonFields({ typed }: { readonly typed: Typed }) {
  return (
    <div className="persons">
      {PERSON_ROWS.map((row) => (
        <fieldset key={row} className="person">
          <legend>Person {row}</legend>
          <FormSelect name={`person${row}Role`} label="Who" value={one(typed, `person${row}Role`) ?? ''} options={[NOBODY, ...options(AFFECTED_ROLES)]} />
          <FormLine name={`person${row}Initials`} label="Initials (may stay empty)" autoComplete="off" maxLength={12} value={one(typed, `person${row}Initials`)} />
          <FormSelect name={`person${row}Hurt`} label="Hurt?" value={one(typed, `person${row}Hurt`) ?? ''} options={[CHOOSE, ...options(YES_NO)]} />
          <FormSelect name={`person${row}Breathed`} label="Breathed smoke?" value={one(typed, `person${row}Breathed`) ?? ''} options={[CHOOSE, ...options(YES_NO)]} />
          <FormLine name={`person${row}FirstAid`} label="First aid, doctor" autoComplete="off" value={one(typed, `person${row}FirstAid`)} />
        </fieldset>
      ))}
    </div>
  );
}
