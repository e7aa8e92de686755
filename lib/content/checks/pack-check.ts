import type { Content, PackCheck, PackLimits, PackMeasure, PackRule, PackTest } from '../model';
import { type ContentFault, idFaults, kindFaults, must } from './fault';
import { cellTypeFaults } from './pack-cells';

const SENSES = ['look', 'listen', 'smell', 'warmth', 'voltage'];
const USES = ['charge', 'fly', 'travel'] as const;

/** What is wrong with the check of packs since the second edition; nothing for an edition without one. */
export function packCheckFaults({ packLimits }: Content): readonly ContentFault[] {
  const { check, rules } = packLimits;
  if (check === undefined) return [];
  return [
    ...idFaults('pack measures', check.measures),
    ...idFaults('pack check', check.steps),
    ...rules.flatMap((rule) => [...ruleFaults(rule, packLimits), ...measureFaults(rule, rule, check), ...askedFaults(rule, check)]),
    ...stepFaults(check),
    ...outcomeFaults(packLimits, check),
    ...cellTypeFaults(packLimits, check),
  ];
}

/** What a rule stops, and whether doubt counts where it must. */
function ruleFaults(rule: PackRule, { rules }: PackLimits): readonly ContentFault[] {
  const where = `pack rule ${rule.id}`;
  const out = rule.verdict === 'leave' || rule.verdict === 'isolate';
  const followed = rules.find(({ id }) => id === rule.follows);
  const same = followed !== undefined && followed.value === rule.value && followed.measure === rule.measure && followed.op === rule.op;
  return [
    ...must(rule.blocks !== undefined, where, 'does not say what it stops'),
    ...must(!(out || rule.verdict === 'retire') || USES.every((use) => rule.blocks?.includes(use)), where, `${rule.verdict} stops every use`),
    ...must(!out || typeof rule.value !== 'boolean' || rule.doubtCounts === true, where, 'doubt must count as the sign'),
    ...must(rule.follows === undefined || (same && rule.schoolMay === undefined), where, 'follows no rule of its measure and figure, or has a range of its own'),
  ];
}

/** A test of a measure nobody defines, or of another kind than the measure. */
function measureFaults(rule: PackRule, test: PackTest, check: PackCheck): readonly ContentFault[] {
  const measure = check.measures.find(({ id }) => id === test.measure);
  const fits = measure !== undefined && isOfKind(measure, test, check);
  return [
    ...must(fits, `pack rule ${rule.id}`, `${test.measure} is unknown or of another kind`),
    ...(test === rule && rule.unless !== undefined ? measureFaults(rule, rule.unless, check) : []),
  ];
}

function isOfKind(measure: PackMeasure, { op, value }: PackTest, check: PackCheck): boolean {
  switch (measure.values) {
    case 'number': return typeof value === 'number' && op !== '=';
    case 'yes or no': return typeof value === 'boolean' && op === '=';
    case 'cell type': return op === '=' && check.cellTypes.some(({ id }) => id === value);
  }
}

/** A sign of `leave` must show before anybody handles the pack, unless only a meter shows it; exceptions are asked in time. */
function askedFaults(rule: PackRule, check: PackCheck): readonly ContentFault[] {
  const stepOf = (measure: string): number => check.steps.findIndex((step) => step.measures.includes(measure));
  const measured = check.measures.find(({ id }) => id === rule.measure)?.byCell === true;
  const handled = check.steps[stepOf(rule.measure)]?.handles === true;
  return [
    ...must(rule.verdict !== 'leave' || measured || !handled, `pack rule ${rule.id}`, 'shows only once somebody handles the pack'),
    ...must(rule.unless === undefined || stepOf(rule.unless.measure) <= stepOf(rule.measure), `pack rule ${rule.id}`, 'its exception is asked too late'),
  ];
}

/** Every measure is asked in one step; look, listen, smell and warmth come before the meter. */
function stepFaults({ measures, steps }: PackCheck): readonly ContentFault[] {
  const asked = steps.flatMap((step) => step.measures);
  const places = SENSES.map((sense) => steps.findIndex(({ id }) => id === sense));
  return [
    ...measures.flatMap(({ id }) => must(asked.filter((name) => name === id).length === 1, `pack measure ${id}`, 'is not asked in exactly one step')),
    ...asked.flatMap((name) => must(measures.some(({ id }) => id === name), 'pack check', `asks for ${name}, which is no measure`)),
    ...must(places.every((place, at) => place > (places[at - 1] ?? -1)), 'pack check', `its order is not ${SENSES.join(', ')}`),
    ...must(steps.find(({ id }) => id === 'voltage')?.handles === true, 'pack check', 'voltage is taken by hand'),
  ];
}

/** Verdicts without words, and ways to come out better than the check allows. */
function outcomeFaults({ order, rules }: PackLimits, { verdicts, incomplete, measures, release, alike }: PackCheck): readonly ContentFault[] {
  const verdictOf = (id: string) => rules.find((rule) => rule.id === id)?.verdict;
  return [
    ...must(order.length === verdicts.length && order.every((verdict, at) => verdict === verdicts[at]?.verdict), 'pack verdicts', 'not one set of words for each verdict, in order'),
    ...must(order.indexOf(incomplete.verdict) > 0, 'incomplete check', 'must not come out as the mildest verdict'),
    ...incomplete.needs.flat().flatMap((name) => must(measures.some(({ id }) => id === name), 'incomplete check', `needs ${name}, which is no measure`)),
    ...must(release.neverAfter.includes('leave') && release.neverAfter.includes('isolate'), 'release', 'lets a pack go that showed a sign of its own'),
    ...release.noSign.flatMap((id) => must(verdictOf(id) === 'watch', 'release', `${id} is no rule of watch`)),
    ...[incomplete, alike.temperature, alike.cellVoltage, release.hoursApart].flatMap(({ kind }) => kindFaults(kind, 'pack check')),
  ];
}
