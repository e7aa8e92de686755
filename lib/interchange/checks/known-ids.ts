import type { Content } from '@/lib/content/model';
import { nearest } from '@/lib/questionnaire/nearest';
import { quoted, sayValue } from '@/lib/questionnaire/say-value';
import { type DocumentFault, faultAt } from '../json/fault';
import { entriesOf, itemsOf, memberOf } from '../json/object';

type Named = readonly { readonly id: string }[];

/** @returns what would be right instead of an id that no edition has: the nearest one, or the whole list when it is short */
export function expectedId(id: string, what: string, known: readonly string[]): string {
  const meant = nearest(id, known);
  if (meant !== undefined) return `${quoted(meant)} was probably meant`;
  return known.length <= 20 ? `one of ${known.map(quoted).join(', ')}` : `the id of ${what} of the content; "npm run content" prints them all`;
}

/** Ids that the edition does not have, in the parts that go by control, exposure, scenario and question. */
export function idFaults(value: unknown, content: Content): readonly DocumentFault[] {
  return [
    ...unknownIn(value, 'exposures', 'an exposure', content.exposures),
    ...unknownIn(value, 'states', 'a control', content.controls),
    ...unknownIn(value, 'record', 'a scenario', content.scenarios),
    ...unknownIn(value, 'notes', 'a question', content.questions),
    ...plannedFaults(value, content.controls),
  ];
}

function unknownIn(value: unknown, part: string, what: string, known: Named): readonly DocumentFault[] {
  const ids = known.map(({ id }) => id);
  return entriesOf(memberOf(value, part)).flatMap(([id]) =>
    (ids.includes(id) ? [] : [faultAt([part, id], `is not ${what} of the content`, expectedId(id, what, ids))]));
}

function plannedFaults(value: unknown, controls: Named): readonly DocumentFault[] {
  const ids = controls.map(({ id }) => id);
  const planned = itemsOf(memberOf(value, 'planned'));
  return planned.flatMap((id, at): readonly DocumentFault[] => {
    if (typeof id !== 'string') return [];
    if (!ids.includes(id)) return [faultAt(['planned', at], sayValue(id), expectedId(id, 'a control', ids))];
    return planned.indexOf(id) < at ? [faultAt(['planned', at], `is ${quoted(id)} a second time`, 'each control once')] : [];
  });
}
