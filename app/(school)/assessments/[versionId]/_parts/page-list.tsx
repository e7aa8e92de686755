import Link from 'next/link';
import { Section } from '@/app/_components/ui/section';
import { aboutTime } from '@/app/_components/questions/about-time';
import { isOpenPage, type Walk, type WalkPage } from '@/lib/assessments/walk';

/** Every page of the walk by section, with what is left of it. */
export function PageList({ walk, versionId }: { readonly walk: Walk; readonly versionId: string }) {
  const sections = [...new Map(walk.pages.map(({ section, sectionTitle }) => [section, sectionTitle]))];
  return (
    <Section id="pages" title="The pages" aside={`${walk.pages.length} pages, ${walk.resolution.path.length} questions`}>
      {sections.map(([id, title]) => (
        <div key={id} className="page-group">
          <h3>{title}</h3>
          <ul className="rows">
            {walk.pages.filter(({ section }) => section === id).map((page) => (
              <li key={page.id}>
                <Link href={`/assessments/${versionId}/walk/${page.id}`} prefetch={false}>{page.title}</Link>
                <span className="small muted">{stateOfPage(page)}</span>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </Section>
  );
}

function stateOfPage(page: WalkPage): string {
  const unsure = page.notSure === 0 ? '' : `, ${page.notSure} not sure`;
  if (!isOpenPage(page)) return `answered${unsure}`;
  const time = page.answered > 0 || page.seconds === null ? '' : `, ${aboutTime(page.seconds)}`;
  return `${page.answered} of ${page.questions.length} answered${unsure}${time}`;
}
