import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import type { PartProps } from './part';

/** What is asked, page by page, and how long it takes. */
export function QuestionsPart({ content }: PartProps) {
  const { questions, pages } = content;
  const seconds = questions.reduce((sum, question) => sum + (question.seconds ?? 0), 0);
  const pageOf = (id: string): string => pages?.find((page) => page.questions.includes(id))?.title ?? content.sections.find((section) => questions.some((question) => question.id === id && question.section === section.id))?.title ?? '';
  return (
    <Section id="questions" title="Questions" aside={`${questions.length}`}>
      <p>
        {pages === undefined ? `${questions.length} questions in ${content.sections.length} sections.` : `${questions.length} questions on ${pages.length} pages, about ${Math.round(seconds / 60)} minutes with nothing filled in beforehand: four words a second and a moment for each decision, our judgement.`}
        {' '}A question that does not apply is not asked. A blank counts as not sure.
      </p>
      <DisclosureTable
        summary="Every question, and where it comes from"
        caption="Questions"
        columns={[
          { head: 'Question', cell: (question) => question.text },
          { head: 'Page', cell: (question) => pageOf(question.id) },
          { head: 'What good looks like', cell: (question) => question.good },
          { head: 'Source', cell: (question) => question.source },
        ]}
        rows={questions}
        rowKey={(question) => question.id}
      />
    </Section>
  );
}
