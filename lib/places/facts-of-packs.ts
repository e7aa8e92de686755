import type { RawFact } from './known-fact';

/** What is needed of a pack of the register; whoever calls knows both areas and hands it over. */
export interface PackForFacts {
  /** in use or on watch: charged, stored and carried */
  readonly serves: boolean;
  readonly series: number;
  readonly parallel: number;
  readonly capacityMah: number;
  readonly printedWh: number | null;
  /** null where no energy can be told */
  readonly energyWh: number | null;
  readonly cellType: string;
  readonly secondHand: boolean | null;
  readonly areaId: string | null;
}

/** What is needed of the packs that left service in the last twelve months. */
export interface PutAside {
  /** days since the first pack was entered: a younger register has not seen a season */
  readonly registerDays: number;
  readonly isolated: number;
  readonly handedOver: number;
  /** days the one handed over last had waited; null when none was */
  readonly lastWaitDays: number | null;
}

/** Three terms; a register that is younger says nothing of a season, and its zeros would look like good news. */
const A_SEASON_DAYS = 270;
const WHERE = 'Pack register';

/**
 * What the register says of the packs, as answers. Where packs differ, those with the most energy stand for all, so that
 * smoke and heat are not taken for less than they may be.
 * @param storageAreas ids of the areas of this site where packs are stored
 */
export function factsOfPacks(packs: readonly PackForFacts[], aside: PutAside, storageAreas: readonly string[]): readonly RawFact[] {
  const serving = packs.filter(({ serves }) => serves);
  const [largest] = [...serving].sort((one, other) => (other.energyWh ?? 0) - (one.energyWh ?? 0));
  if (largest === undefined) return [];
  const facts: readonly (Pick<RawFact, 'question' | 'answer'>)[] = [
    { question: 'team-packs', answer: { packs: serving.length, cells: largest.series, capacityMah: largest.capacityMah * largest.parallel, packWh: largest.printedWh } },
    { question: 'team-voltage', answer: voltageOf(serving) },
    { question: 'team-source', answer: serving.some(({ secondHand }) => secondHand === true) ? 'no' : null },
    { question: 'store-packs', answer: { packsStored: storedHere(serving, storageAreas) } },
    { question: 'damaged-number', answer: aside.registerDays < A_SEASON_DAYS ? { lastWaitDays: aside.lastWaitDays } : { damagedPacks: aside.isolated, disposedPacks: aside.handedOver, lastWaitDays: aside.lastWaitDays } },
  ];
  return facts.map((fact) => ({ ...fact, from: 'packs', where: WHERE }));
}

/** Packs out of scope make no answer: the question has none for them. */
function voltageOf(packs: readonly PackForFacts[]): string | null {
  const kinds = new Set(packs.map(({ cellType }) => cellType));
  if (kinds.has('not-marked')) return 'unmarked';
  const [only] = kinds;
  if (kinds.size === 1) return only === 'full-4-20' ? 'standard' : only === 'full-4-35' ? 'high' : null;
  return kinds.size === 2 && kinds.has('full-4-20') && kinds.has('full-4-35') ? 'both' : null;
}

/** Packs of which nobody wrote down the place may lie here too. */
function storedHere(packs: readonly PackForFacts[], storageAreas: readonly string[]): number | null {
  const here = packs.filter(({ areaId }) => areaId === null || storageAreas.includes(areaId)).length;
  return here === 0 ? null : here;
}
