import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { Frame } from '@/app/_components/ui/frame';
import { GuidanceText } from '@/app/_components/ui/guidance-text';
import { MarginNote } from '@/app/_components/ui/margin-note';
import { PageHead } from '@/app/_components/ui/page-head';
import { Section } from '@/app/_components/ui/section';
import { fillGuidance, guidanceWords } from '@/lib/content/fill-guidance';
import { guidance2 } from '@/lib/content/guidance-2';
import { BasisTable } from '../../_parts/basis-table';

interface GuidancePageProps { readonly params: Promise<{ readonly id: string }> }

const textOf = (id: string) => guidance2.texts.find((one) => one.id === id);

export async function generateMetadata({ params }: GuidancePageProps): Promise<Metadata> {
  return { title: textOf((await params).id)?.title ?? 'Guidance' };
}

/** One guidance text, and nothing beside it: some of them must never be read beside another. */
export default async function GuidancePage({ params }: GuidancePageProps) {
  const text = textOf((await params).id);
  if (text === undefined) notFound();
  const filled = fillGuidance(text, guidanceWords(guidance2.fields, {}));
  return (
    <Frame here="method" marginLabel="About this text" margin={<MarginNote title="This text"><p>Version {text.version}, for {text.audience.join(', ')}. No school’s own number or place stands in it here.</p></MarginNote>}>
      <PageHead crumb={<a href="/method#guidance">All guidance</a>} title={text.title} lead={text.when} />
      <Section id="text" title="What to do"><GuidanceText guidance={filled} /></Section>
      <Section id="basis" title="What it rests on"><BasisTable title={text.title} basis={text.basis} /></Section>
    </Frame>
  );
}
