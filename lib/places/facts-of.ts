import type { Content } from '@/lib/content/model';
import { factsOfArea } from './facts-of-area';
import { factsOfPacks, type PackForFacts, type PutAside } from './facts-of-packs';
import { type KnownFact, knownFacts, type RawFact } from './known-fact';
import type { Area, Site } from './place';

/** What the school says of itself, for places that say nothing else. */
export interface SchoolForFacts {
  readonly emergencyNumber: string;
  readonly meetingPlace: string;
  readonly secondMeetingPlace: string | null;
}

export interface RecordForFacts {
  readonly school: SchoolForFacts;
  readonly site: Site;
  readonly packs: readonly PackForFacts[];
  readonly putAside: PutAside;
}

/**
 * Everything the school has written down already that answers a question of this edition, to be shown and confirmed, not
 * asked again (WCAG 3.3.7). A use that a site has two areas of gives no facts: none of the two may stand for both.
 */
export function factsOf(content: Content, { school, site, packs, putAside }: RecordForFacts): readonly KnownFact[] {
  const storage = site.areas.filter(({ use }) => use === 'storage').map(({ id }) => id);
  return knownFacts(content, [
    ...factsOfSite(site, school),
    ...onePerUse(site.areas).flatMap((area) => factsOfArea(area, `${site.name}, ${area.name}`)),
    ...factsOfPacks(packs, putAside, storage),
  ]);
}

function factsOfSite(site: Site, school: SchoolForFacts): readonly RawFact[] {
  const here = site.kind === 'own' ? school : { emergencyNumber: null, meetingPlace: null, secondMeetingPlace: null };
  const facts = [
    { question: 'response-address', answer: site.address },
    { question: 'response-number', answer: site.emergencyNumber ?? here.emergencyNumber },
    { question: 'response-meeting', answer: site.meetingPlace ?? here.meetingPlace },
    { question: 'response-second', answer: site.secondMeetingPlace ?? here.secondMeetingPlace },
  ];
  return facts.map((fact) => ({ ...fact, from: 'site', where: site.name }));
}

function onePerUse(areas: readonly Area[]): readonly Area[] {
  return areas.filter((area) => areas.every((other) => other === area || other.use !== area.use));
}
