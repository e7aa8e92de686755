import { resolveVenue } from '@/lib/core/answers/resolve-venue';
import { at } from '@/lib/core/at';
import type { AssessmentDocument } from '@/lib/core/document';
import type { Content } from '@/lib/content/model';
import { compileContent } from './compiled-content';
import { preventiveProductsOf } from './risk-setup';

/**
 * Returns, by scenario id, the mean share of top events that the preventive controls of a document let through, 0 to 1:
 * what a record that was made behind these controls has to be counted with (amendment A8).
 * @throws on a fault of the content only
 */
export function preventiveProducts(content: Content, document: AssessmentDocument): Readonly<Record<string, number>> {
  const venue = resolveVenue(content, document);
  const products = preventiveProductsOf(compileContent(content), venue);
  return Object.fromEntries(content.scenarios.map(({ id }, index) => [id, at(products, index)]));
}
