import type { Metadata } from 'next';
import Link from 'next/link';
import { ActionForm } from '@/app/_components/form/action-form';
import { FormHidden, FormNumber, FormSubmit } from '@/app/_components/form/form-fields';
import { Icon } from '@/app/_components/ui/icon';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import type { TemperatureUnit } from '@/lib/packs/checks/check-answers';
import { shownFigure, unitWords } from '@/lib/packs/limit-figure';
import { type AdjustableLimit, adjustableLimits, CHECK_DAYS } from '@/lib/packs/school-rules';
import { fieldOfLimit } from '@/lib/packs/school-rules-input';
import { requireMay } from '@/lib/server/actor';
import { PACK_LIMITS, schoolRulesOf, temperatureUnitOf } from '@/lib/server/packs/pack-limits';
import { currentSchool } from '@/lib/server/people/current-school';
import { changeRulesAction } from './actions';

export const metadata: Metadata = { title: 'Limits for packs' };

/** What the school holds its packs to, where that may be stricter than the content. */
export default async function LimitsPage() {
  const actor = await requireMay('school.change');
  const [school, rules] = await Promise.all([currentSchool(actor), schoolRulesOf(actor)]);
  const temperature = temperatureUnitOf(school);
  return (
    <Sheet margin={<MarginNote title="Only stricter">A school may watch more closely than the program asks, within the range beside each figure. A figure without a range is fixed and does not stand here. Checks already made keep the verdict they had.</MarginNote>}>
      <PageHead crumb={<Link href="/school" prefetch={false}><Icon name="left" />School</Link>} title="Your own limits for packs" lead="Leave a field empty to go by the program’s own figure." />
      <ActionForm action={changeRulesAction} check={{ of: 'limits', limits: ALL, rules }} id="limits" faultsTitle="Not saved yet. Look at this again">
        <FormHidden name="revision" value={String(school.revision)} />
        <FormHidden name="temperature" value={temperature} />
        <Section id="checks" title="How long a check counts">
          <FormNumber name="checkDays" label="Days after which a pack has to be checked again" unit="days" value={text(rules.checkDays)} hint={`Older than that, a check counts as none: the pack is not charged until somebody has looked. From ${CHECK_DAYS.min} to ${CHECK_DAYS.max}; empty: no end.`} />
        </Section>
        {VERDICTS.map(({ id, title, limits }) => (
          <Section key={id} id={id} title={title}>
            <div className="stack fields">{limits.map((limit) => <LimitField key={limit.id} limit={limit} temperature={temperature} value={rules.packLimits[limit.id]} />)}</div>
          </Section>
        ))}
        <p className="row"><FormSubmit>Save</FormSubmit></p>
      </ActionForm>
    </Sheet>
  );
}

const ALL = adjustableLimits(PACK_LIMITS);
const verdictOf = ({ id }: AdjustableLimit): string | undefined => PACK_LIMITS.rules.find((rule) => rule.id === id.replace(/^.*\//, ''))?.verdict;
const VERDICTS = [
  { id: 'leave', title: 'Leave it, everybody out', limits: ALL.filter((limit) => verdictOf(limit) === 'leave') },
  { id: 'isolate', title: 'Isolate', limits: ALL.filter((limit) => verdictOf(limit) === 'isolate') },
  { id: 'retire', title: 'Retire', limits: ALL.filter((limit) => verdictOf(limit) === 'retire') },
  { id: 'watch', title: 'Watch', limits: ALL.filter((limit) => verdictOf(limit) === 'watch') },
  { id: 'targets', title: 'Storing and landing', limits: ALL.filter((limit) => verdictOf(limit) === undefined) },
];

function LimitField({ limit: { id, text: words, unit, standing, range }, temperature, value }: { readonly limit: AdjustableLimit; readonly temperature: TemperatureUnit; readonly value: number | undefined }) {
  const label = words.replace(/^./u, (letter) => letter.toUpperCase());
  const shown = (figure: number) => shownFigure(unit, figure, temperature);
  return <FormNumber name={fieldOfLimit(id)} label={label} unit={unitWords(unit, temperature)} value={value === undefined ? '' : text(shown(value))} hint={`Empty: ${shown(standing)}. You may set ${shown(range.min)} to ${shown(range.max)}.`} />;
}

function text(value: number | undefined): string {
  return value === undefined ? '' : String(value);
}
