import { Icon } from '@/app/_components/ui/icon';
import type { GuidanceText } from '@/lib/content/model';
import { SMOKE, type Way, WAYS } from './ways';

interface WayListProps {
  readonly here: Way;
  readonly text: GuidanceText;
  /** kept from page to page: where people are */
  readonly query: string;
}

/** The other pages. Plain links: a page that is loaded whole opens without a network, too. */
export function WayList({ here, text, query }: WayListProps) {
  const noForm = text.neverBeside.some((rule) => 'guidance' in rule && rule.guidance === 'recording');
  const ways = [SMOKE, ...WAYS].filter((way) => way.path !== here.path && !(noForm && way.guidance === 'recording'));
  return (
    <nav className="ways" aria-label="What else there is">
      <ul>
        {ways.map(({ path, name, hint }) => (
          <li key={path}>
            <a href={`${path}${query}`}><span><b>{name}</b>{hint === undefined ? null : <span className="hint"> {hint}</span>}</span><Icon name="right" /></a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
