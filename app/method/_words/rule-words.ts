import type { ConstantId, Content, PhysicsId } from '@/lib/content/model';
import { exact } from '@/lib/wording/numbers';

/** The rules of an edition for somebody who has not read the calculation; its numbers are those of the edition. */
export interface RuleWords { readonly smoke: readonly string[]; readonly heat: readonly string[]; readonly packs: readonly string[] }

export function ruleWords(content: Content): RuleWords {
  const number = (id: PhysicsId | ConstantId): string => exact(numberOf(content, id));
  return { smoke: smokeWords(content, number), heat: heatWords(number), packs: packWords(content, number) };
}

function numberOf({ physics, constants }: Content, id: PhysicsId | ConstantId): number {
  const value = physics.find((one) => one.id === id)?.mid ?? constants.find((one) => one.id === id)?.value;
  if (value === undefined) throw new Error(`the content has no ${id}`);
  return value;
}

type NumberWords = (id: PhysicsId | ConstantId) => string;

function smokeWords({ idlh, edition = 1 }: Content, number: NumberWords): readonly string[] {
  return [
    `A pack gives off gas for about ${number('releaseDuration')} s, in proportion to its energy. Packs that touch start one after the other, about ${number('packToPackTime')} s apart.`,
    'The smoke is spread evenly over the room, and the room’s own air carries it off.',
    `People breathe it until the last one is out. Where nobody is there and smoke is found later, it counts for as long as packs give it off${edition < 2 ? '' : ', and the people of the session do not count'}.`,
    `People at the table breathe it denser for the first ${number('nearTime')} s: up to ${number('nearFactorMax')} times in a large room, and as it is in a room of ${number('nearRefVolume')} m³.`,
    `Hydrogen fluoride: below 1 ppm a scare, from 1 ppm slight, from ${exact(idlh.HF)} ppm serious, from the published level that disables severe, from the published level that endangers life it could kill. The levels fall the longer people breathe it.`,
    `Carbon monoxide: from half the published level that disables slight, from that level serious, from ${exact(idlh.CO)} ppm or the level that endangers life severe. It could kill when that level is passed and the dose is enough to make people incapable.`,
    'The worse of the two gases counts. Where ten people or more share the air, the class is one higher.',
  ];
}

function heatWords(number: NumberWords): readonly string[] {
  return [
    `Of the packs that touch, about ${number('burningTogether')} burn at their fiercest together. From their heat follow the height of the flame and how much is radiated.`,
    `Flames, jets and sparks reach at least ${number('reachMin')} m. Whoever stands within reach is burned: seriously by one pack, severely by more.`,
    `Further off the radiated heat decides: below ${number('painFlux')} kW/m² slight, below ${number('burnFlux')} kW/m² serious, else severe. Never below slight, because people reach in.`,
    'Fire in the room: two steps above a scare with little that could burn, one more with the ordinary amount, one more with much.',
    `One step is added where the heat sets wood alight (${number('woodIgnition')} kW/m²), where something that burns lies against the packs, or where the flame reaches the shelf or ceiling above.`,
  ];
}

function packWords({ edition = 1 }: Content, number: NumberWords): readonly string[] {
  return [
    'One pack to a rigid box: one burns. In a bag, or a box not quite so: two at most.',
    `In the open: as many as touch, at most ${number('openSpread')} before the first is out. Not sure counts as in the open.`,
    ...(edition < 2 ? [] : ['Packs joined on one charger output burn together, whatever is around each.']),
    'The store, damaged packs and the travelling case go by the same rule with their own boxes. Damaged packs that are not kept apart take the store with them.',
    'The number is never drawn by chance.',
  ];
}
