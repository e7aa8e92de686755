import { heatScene } from '@/lib/charts/heat-distances';
import { WIDE } from '@/lib/charts/scene';
import type { Venue } from '@/lib/core/answers/venue';
import { numberInput, wordInput } from '@/lib/core/answers/venue';
import { durationWords, metres } from '@/lib/wording/measures';
import { percent, rounded, whole } from '@/lib/wording/numbers';
import type { Block, PaperSection } from '../paper';
import type { AssessmentFacts } from './facts';

/** What the places are like and what hangs on the circuit: the figures everything else is worked out from. */
export function roomSection(facts: AssessmentFacts, venue: Venue): PaperSection {
  const assumed = new Set(facts.result.assumedInputs.map((one) => one.input));
  const row = (name: string, value: string, ...inputs: readonly string[]) => (inputs.some((input) => assumed.has(input)) ? { name, value, under: 'assumed, nobody knows it' } : { name, value });
  const figure = (input: string): number => numberInput(venue, input);
  const outdoors = (input: string, volume: string): string => (figure(input) === 1 ? 'outdoors' : `${rounded(figure(volume))} m³`);
  const { electrical, battery, smoke } = facts.result;
  const blocks: readonly Block[] = [
    { kind: 'facts', columns: 2, rows: [
      row('Charging room', outdoors('chargingOutdoor', 'chargingVolume'), 'chargingVolume'),
      row('Its air', `${rounded(smoke.lot.airChanges)} changes an hour`, 'chargingAch', 'airMode', 'chargingOpening'),
      row('Ways out', whole(figure('exits')), 'exits'),
      row('Time until everybody is out', durationWords(figure('chargingEvac')), 'chargingEvac'),
      row('People in the room while packs charge', `${whole(figure('peopleRoom'))}, of them ${whole(figure('peopleNear'))} within two metres`, 'peopleRoom', 'peopleNear'),
      row('Nearest person', metres(figure('personDistance')), 'personDistance'),
      row('Nearest thing that burns', `${metres(figure('combustibleDistance'))}, ${metres(figure('clearHeight'))} free above`, 'combustibleDistance', 'clearHeight'),
      row('What could burn there', wordInput(venue, 'fuelLoad'), 'fuelLoad'),
      row('Packs charging at once', `at most ${whole(figure('packsOnTable'))}, of which ${whole(figure('packsPerLotCharging'))} touch`, 'packsOnTable', 'packsPerLotCharging'),
      row('Store', outdoors('storageOutdoor', 'storageVolume'), 'storageVolume'),
      row('Packs in the store', `${whole(figure('packsStored'))}, of which ${whole(figure('packsPerLotStorage'))} touch`, 'packsStored', 'packsPerLotStorage'),
      row('Hall', `${rounded(figure('arenaVolume'))} m³, ${whole(figure('spectators'))} spectators`, 'arenaVolume', 'spectators'),
    ] },
    { kind: 'facts', columns: 2, rows: [
      row('One pack', `${whole(figure('cells'))} cells, ${whole(figure('capacityMah'))} mAh, ${rounded(battery.packWh)} Wh`, 'cells', 'capacityMah', 'packWh'),
      row('Energy in the store', `${rounded(battery.storedWh)} Wh`),
      row('Charge current at 1C', `${rounded(battery.currentAt1C)} A`),
      row('Load on the circuit', `${whole(electrical.loadWatts)} W, ${percent(electrical.loadShare)} of what it may carry for hours`, 'chargerWatts', 'otherWatts', 'circuitAmps'),
    ] },
  ];
  return { id: 'room', title: 'The room, the store and the circuit', blocks: [...blocks, heatFigure(facts, assumed, figure)] };
}

/** What nobody knows is not drawn: an assumed distance would look like a measured one. */
function heatFigure({ result }: AssessmentFacts, assumed: ReadonlySet<string>, figure: (input: string) => number): Block {
  const known = (input: string): number | null => (assumed.has(input) ? null : figure(input));
  const around = { person: known('personDistance'), combustible: known('combustibleDistance'), clearHeight: known('clearHeight') };
  return { kind: 'figure', scene: heatScene(result.heat.lot, around, WIDE), caption: 'Heat of the packs that touch, at the fiercest, against what stands around the charging table.' };
}
