import { walkOf } from '@/lib/assessments/walk';
import type { ResultView } from '@/lib/server/signing/result-view';

/** Where a question is answered and where a risk is told in full. */
export function addressesIn({ version, scored: { content } }: ResultView): { readonly ofQuestion: (id: string) => string; readonly ofRisk: (id: string) => string } {
  const here = `/assessments/${version.id}`;
  const pages = new Map(walkOf(content, version).pages.flatMap((page) => page.questions.map(({ id }) => [id, page.id] as const)));
  return {
    // A question that does not apply now stands on no page.
    ofQuestion: (id) => { const page = pages.get(id); return page === undefined ? `${here}/walk` : `${here}/walk/${page}#walk-${id}`; },
    ofRisk: (id) => `${here}/result/${id}`,
  };
}
