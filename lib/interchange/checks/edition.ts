import { editions } from '@/lib/content/editions';
import type { Content } from '@/lib/content/model';
import { listed, sayValue } from '@/lib/questionnaire/say-value';
import { type DocumentFault, faultAt } from '../json/fault';
import { memberOf } from '../json/object';

/**
 * An edition that was never published, or that came after the one the document is read with. A version that is no
 * text is a fault of shape already.
 */
export function editionFaults(value: unknown, content: Content): readonly DocumentFault[] {
  const named = memberOf(value, 'contentVersion');
  if (typeof named !== 'string') return [];
  const published = editions.map((edition) => edition.content.version);
  const readable = published.slice(0, published.indexOf(content.version) + 1);
  if (readable.includes(named)) return [];
  const problem = published.includes(named) ? `${sayValue(named)}, an edition later than the one it is read with` : sayValue(named);
  return [faultAt(['contentVersion'], problem, `one of ${listed(readable)}, or nothing for the edition it is read with`)];
}
