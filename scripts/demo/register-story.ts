import { check, enter, handOver, packInput, place } from './packs';
import { later } from './calendar';
import type { Entry, World } from './world';

const numbered = (from: number, to: number): readonly string[] => Array.from({ length: to - from + 1 }, (_, index) => `W-${String(from + index).padStart(2, '0')}`);

/** The packs of the season's beginning, and six that were bought lately and that nobody has checked yet. */
const FIRST_PACKS = numbered(1, 24);
const NEW_PACKS = numbered(25, 30);

/** The register: packs entered, checked every four weeks, and what became of those that were hit or grew old. */
export function registerStory(world: World): readonly Entry[] {
  const { calendar, people, places } = world;
  const first = (label: string) => packInput(label, { batch: Number(label.slice(2)) <= 12 ? 'Q4' : 'Q5', boughtOn: calendar.day(-420), firstUsedOn: calendar.day(-400), areaId: places.storageId, place: `box ${Math.ceil(Number(label.slice(2)) / 2)}` });
  const late = (label: string) => packInput(label, { batch: 'Q7', boughtOn: calendar.day(-4), firstUsedOn: null, areaId: places.storageId, place: `box ${Math.ceil(Number(label.slice(2)) / 2)}` });
  return [
    { at: calendar.at(-85, '15:00'), what: 'the register', run: (at) => enter(world, people.organiser, at, FIRST_PACKS.map(first)) },
    ...[-84, -56, -28].map((day): Entry => ({ at: calendar.at(day, '14:00'), what: 'all packs checked', run: (at) => checkAll(world, at) })),
    { at: calendar.at(-10, '15:40'), what: 'a pack with uneven cells', run: (at) => check(world, people.helper, at, 'W-14', { cell1: '3.71', cell2: '3.83', cell3: '3.82', cell4: '3.83' }) },
    { at: calendar.at(-3, '16:30'), what: 'new packs', run: (at) => enter(world, people.organiser, at, NEW_PACKS.map(late)) },
  ];
}

/** Every pack that serves, two minutes each; those that were put aside are left alone. */
async function checkAll(world: World, from: Date): Promise<void> {
  const rows = await world.db.pack.findMany({ where: { schoolId: world.people.helper.schoolId, state: { in: ['in-use', 'watch'] } }, select: { label: true }, orderBy: { labelKey: 'asc' } });
  for (const [index, { label }] of rows.entries()) await check(world, world.people.helper, later(from, 2 * index), label);
}

/** A dented pack is isolated at once, lies outdoors in sand within minutes, and is collected within the week. */
export async function isolateDented(world: World, at: Date, label: string): Promise<void> {
  const { helper } = world.people;
  await check(world, helper, at, label, { dented: 'yes', hit: 'hours', hoursSinceImpact: '0.2', hoursSinceUse: '0.5' });
  await place(world, helper, later(at, 4), label, 'outdoor-spot', 'container 1, lid loose', 'yes');
}

/** The collection point takes it, and somebody there signs for it. */
export function collected(world: World, day: number, label: string): Entry {
  return { at: world.calendar.at(day, '12:10'), what: `${label} collected`, run: (at) => handOver(world, world.people.organiser, at, label, 'Recycling yard, Weir Lane', 'A. Stone') };
}
