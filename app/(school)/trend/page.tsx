import type { Metadata } from 'next';
import Link from 'next/link';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { Sheet } from '@/app/_components/ui/sheet';
import { Stat, Stats } from '@/app/_components/ui/stat';
import { perThousand, findingTitle, findingWords } from '@/lib/sessions/trend-words';
import { requireMay } from '@/lib/server/actor';
import { trendOfSchool } from '@/lib/server/sessions/read-trend';
import { TrendChart } from './_parts/trend-chart';

export const metadata: Metadata = { title: 'Trend' };

/** What the season's record says, and what it cannot say. */
export default async function TrendPage() {
  const actor = await requireMay('trend.read');
  const { trend, school } = await trendOfSchool(actor, new Date());
  const { rate } = trend;
  return (
    <Sheet margin={<HowItIsCounted />} marginLabel="How it is counted">
      <PageHead crumb={<><Link href="/today" prefetch={false}>Today</Link> {school.schoolName}</>} title={findingTitle(trend)} lead={findingWords(trend)} />
      <Section id="record" title="The record"><Stats>
        <Stat figure={String(trend.charges)} label="pack charges logged" />
        <Stat figure={String(trend.incidents)} label={trend.nearMisses === 1 ? 'incidents, and one near miss' : `incidents, and ${trend.nearMisses} near misses`} />
        {rate === null ? null : <Stat figure={perThousand(rate.value)} label="incidents for 1,000 charges" range={`between ${perThousand(rate.limits.low)} and ${perThousand(rate.limits.high)}`} />}
      </Stats></Section>
      {rate === null ? <p><Link href="/sessions/new" prefetch={false}>Make the opening check</Link> and log the packs of a session.</p> : <Section id="fortnights" title="By fortnight"><TrendChart trend={trend} style={school} /></Section>}
    </Sheet>
  );
}

function HowItIsCounted() {
  return (
    <>
      <MarginNote title="Near misses">They are told beside and not counted. Whoever writes down what nearly happened makes no record look worse.</MarginNote>
      <MarginNote title="The range">Exact limits of a Poisson count at 95 % (Garwood): the true rate may well lie anywhere between.</MarginNote>
      <MarginNote title="The grain">How far chance alone goes, in a fortnight with so many charges (u-chart, three standard deviations). It permits nothing.</MarginNote>
      <MarginNote title="Too few">With fewer than five incidents, or fewer than one expected in a fortnight, the record is called too short. That is our judgement.</MarginNote>
    </>
  );
}
