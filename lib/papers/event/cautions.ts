import { type PaperSection, text } from '../paper';
import type { EventFacts } from './facts';

/** What comes before this file, and what it does not say. */
export function cautionSection({ site, school, until, content }: EventFacts): PaperSection {
  return { id: 'cautions', title: 'What comes before this file', blocks: [
    { kind: 'list', items: [
      { lead: 'The local fire code and the fire service.', text: 'Where they say something else, they are right. What they were asked and what they answered stands in the assessment.' },
      { lead: `The safety officer of ${site.name}.`, text: 'The rules of the house stand above ours. Whoever answers for the venue may stop it at any time, without a reason.' },
      { lead: `The safety officer of ${school.name}.`, text: 'Signs this file and may withdraw it: the page for checking says so at once.' },
      { lead: 'The maker of the packs and of the chargers.', text: 'Their instructions are at the table.' },
    ] },
    text(`It is for this date and place, until ${until}. Another hall, another day, more packs or other packs: a new file.`),
    text(`A screening aid, made from the content ${content.version}: it ranks, it permits nothing. What is printed here was right when it was made; the page for checking says whether it still holds.`, 'quiet'),
  ] };
}
