import { addPacks } from '@/lib/db/packs/add-packs';
import { changePackState, placeIsolatedPack } from '@/lib/db/packs/move-pack';
import { packHistory } from '@/lib/db/packs/read-packs';
import { recordCheck } from '@/lib/db/packs/record-check';
import type { Member } from '@/lib/db/people/find-member';
import { schoolScope } from '@/lib/db/scope';
import { addPacks as decideNewPacks } from '@/lib/packs/change-pack';
import { cellField, type CheckTyped, FIRST_LOOK, HIT_FIELD, yesNoMeasures } from '@/lib/packs/checks/check-answers';
import { CHECK_PAGE_IDS } from '@/lib/packs/checks/check-pages';
import { takeCheck } from '@/lib/packs/checks/take-check';
import type { PackHistory } from '@/lib/packs/pack-history';
import { type PackInput, PackInputSchema } from '@/lib/packs/pack-input';
import { calendarDay } from '@/lib/wording/dates';
import { CONTENT_VERSION, done, LIMITS, type World } from './world';

/** A pack of an invented maker. */
export function packInput(label: string, given: { readonly batch: string; readonly boughtOn: string; readonly firstUsedOn: string | null; readonly areaId: string; readonly place: string }): PackInput {
  return PackInputSchema.parse({ label, series: '4', capacityMah: '850', cRating: '75', printedWh: '12.6', cellType: 'full-4-20', connector: 'XT30', maker: 'Weir Cells', seller: 'Quayside Models', secondHand: 'no', chargesBefore: '0', ...given });
}

/** Enters packs in the register. */
export async function enter({ db, packs, calendar }: World, by: Member, at: Date, inputs: readonly PackInput[]): Promise<void> {
  const today = calendarDay(at, calendar.timeZone);
  const { ids } = done('new packs', await addPacks(db, by, at, LIMITS, 'import', (taken) => decideNewPacks(inputs, taken, today)));
  for (const [index, { label }] of inputs.entries()) packs.set(label, ids[index] ?? '');
}

/** What a check finds besides "nothing": answers and readings by the names of the form's fields. */
export type Found = CheckTyped;

/** Checks a pack by the form's own questions. What is not given is a sound pack at rest. */
export async function check(world: World, by: Member, at: Date, label: string, found: Found = {}): Promise<void> {
  const history = await historyOf(world, label);
  const purpose = 'plain';
  const turn = takeCheck('voltage', { ...soundAnswers(history), ...found }, { limits: LIMITS, pack: history.pack, unit: '°C', today: calendarDay(at, world.calendar.timeZone), charges: history.charges, firstResistance: null });
  if (turn.turn === 'faults' || turn.turn === 'next') throw new Error(`the check of ${label} is not complete: ${JSON.stringify(turn)}`);
  done(`checking ${label}`, await recordCheck(world.db, by, at, { packId: history.pack.id, purpose, contentVersion: CONTENT_VERSION, note: null, found: turn.found }));
}

function soundAnswers({ pack, checks }: PackHistory): CheckTyped {
  const no = 'no';
  const asked = CHECK_PAGE_IDS.flatMap((page) => yesNoMeasures(LIMITS, page, pack)).filter((measure) => measure !== 'firstChargeWentWell');
  const cells = Object.fromEntries(Array.from({ length: pack.series }, (_, cell) => [cellField(cell + 1), (3.8 + 0.01 * ((cell + pack.label.length + checks.length) % 3)).toFixed(2)]));
  return { ...Object.fromEntries(asked.map((measure) => [measure, no])), marked: 'yes', warming: checks.length === 0 ? FIRST_LOOK : no, hoursSinceUse: '24', [HIT_FIELD]: 'no', hoursSinceCharge: '40', hoursFull: '0', ...cells };
}

/** Says where an isolated pack lies now. */
export async function place(world: World, by: Member, at: Date, label: string, placeNow: string, placeNote: string | null, inSand: 'yes' | 'not sure'): Promise<void> {
  done(`placing ${label}`, await placeIsolatedPack(world.db, by, at, LIMITS, { packId: idOf(world, label), placeNow, placeNote, inSand }));
}

/** Puts a pack on watch back in use, after a check that found no sign. */
export async function putBack(world: World, by: Member, at: Date, label: string): Promise<void> {
  done(`putting ${label} back`, await changePackState(world.db, by, at, LIMITS, { packId: idOf(world, label), to: 'in-use', reason: 'Checked two days after a crash: no sign', cause: undefined, collectedBy: null, receiverName: null }));
}

/** Hands an isolated pack over to whoever collects it. */
export async function handOver(world: World, by: Member, at: Date, label: string, collectedBy: string, receiverName: string): Promise<void> {
  done(`handing ${label} over`, await changePackState(world.db, by, at, LIMITS, { packId: idOf(world, label), to: 'handed-over', reason: `Collected by ${collectedBy}`, cause: undefined, collectedBy, receiverName }));
}

export function idOf({ packs }: World, label: string): string {
  const id = packs.get(label);
  if (id === undefined) throw new Error(`the demo has no pack ${label}`);
  return id;
}

export async function historyOf(world: World, label: string): Promise<PackHistory> {
  const history = await packHistory(world.db, schoolScope(world.people.organiser), idOf(world, label));
  if (history === null) throw new Error(`the demo has no pack ${label}`);
  return history;
}
