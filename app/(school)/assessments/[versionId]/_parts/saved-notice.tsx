import { Notice } from '@/app/_components/ui/notice';
import { totalMoved } from '@/lib/assessments/effect';
import type { WhatSaved } from '@/lib/server/assessments/what-saved';

/** What the last saving changed. Told after it, never beside the answers: nobody is to answer for the figure. */
export function SavedNotice({ saved }: { readonly saved: WhatSaved }) {
  const { answers, cleared, raised, dropped, asked } = saved;
  return (
    <div role="status" className="saved">
      <Notice kind={raised.length > 0 ? 'act' : 'done'} title={answers === 1 ? 'Saved: one answer changed.' : `Saved: ${answers} answers changed.`} level={2}>
        <ul>
          {raised.map((stop) => <li key={stop.id}><b>Stops you now:</b> {stop.title}</li>)}
          {cleared.map((stop) => <li key={stop.id}><b>Stops you no more:</b> {stop.title}</li>)}
          <li>{totalMoved(saved)} That is this model’s figure and our judgement: it ranks, it permits nothing.</li>
          {asked === 0 ? null : <li>{asked === 1 ? 'One more question applies now.' : `${asked} more questions apply now.`}</li>}
          {dropped.length === 0 ? null : <li>{dropped.length === 1 ? 'One later answer does not count any more' : `${dropped.length} later answers do not count any more`}, because {dropped.length === 1 ? 'its question does' : 'their questions do'} not apply: {dropped.map((text) => `“${text}”`).join(', ')}. {dropped.length === 1 ? 'It is' : 'They are'} kept, in case you change it back.</li>}
        </ul>
      </Notice>
    </div>
  );
}
