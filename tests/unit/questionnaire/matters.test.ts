import { describe, expect, it } from 'vitest';
import { editions } from '@/lib/content/editions';
import { controlsSetBy, inputsSetBy } from '@/lib/content/question-sets';

/** What a safety officer expects to be asked about, and the control or input through which it counts. */
const MATTERS: readonly [matter: string, question: string, sets: string][] = [
  ['charging surface', 'table-surface', 'surface-charging'],
  ['clearance', 'table-clear', 'clear-space-charging'],
  ['clearance, measured', 'table-distances', 'combustibleDistance'],
  ['attendance', 'routine-attended', 'attended-charging'],
  ['exits', 'room-exits', 'exits-clear'],
  ['exits not beside the table', 'room-off-exit', 'charge-off-exit'],
  ['circuit load', 'electric-load', 'circuitAmps'],
  ['circuit load, checked', 'electric-kit', 'load-check'],
  ['charger mode', 'routine-charger', 'balance-charger'],
  ['charger settings', 'routine-settings', 'labelled-settings'],
  ['charge rate', 'routine-rate', 'gentle-rate'],
  ['cool-down', 'routine-rest', 'cool-down-rest'],
  ['pre-charge look', 'routine-check', 'pre-charge-check'],
  ['bags', 'table-container', 'charge-bag'],
  ['boxes', 'table-container', 'charge-box'],
  ['isolation spot', 'damaged-outdoors', 'outdoor-spot'],
  ['openings', 'room-window', 'chargingOpening'],
  ['fans', 'room-fan', 'chargingFlow'],
  ['smoke path', 'room-smoke-out', 'smoke-outlet'],
  ['detection where packs charge', 'alarm-charging', 'smoke-alarm-charging'],
  ['detection in the store', 'alarm-store', 'smoke-alarm-store'],
  ['storage container', 'store-cabinet', 'store-cabinet'],
  ['storage charge level', 'store-charge', 'storage-charge'],
  ['separation of leads and balance leads', 'people-kit', 'leads-covered'],
  ['storage temperature and sun', 'store-keep', 'store-cool'],
  ['quantity stored', 'store-packs', 'packsStored'],
  ['access by students', 'store-keep', 'store-locked'],
  ['netting', 'arena-net', 'arena-net'],
  ['spectators', 'arena-kit', 'spectator-line'],
  ['props', 'arena-kit', 'rotor-cage'],
  ['landing voltage', 'people-kit', 'low-voltage-stop'],
  ['crash watch', 'people-crash', 'crash-watch'],
  ['road', 'travel-trips', 'roadTrips'],
  ['warm vehicle', 'travel-habits', 'vehicle-never-hot'],
  ['air travel', 'travel-air', 'air-check'],
  ['collection point', 'damaged-handover', 'hand-over'],
  ['taped terminals', 'damaged-dispose', 'terminals-taped'],
  ['queue of damaged packs', 'damaged-number', 'damagedPacks'],
  ['alarm', 'alarm-raise', 'alarm-means'],
  ['evacuation', 'room-leave', 'chargingEvac'],
  ['phone and contacts', 'response-number', 'localNumber'],
  ['first aid', 'response-ready', 'first-aid'],
  ['drill', 'response-ready', 'response-drill'],
  ['briefing', 'people-trained', 'trained-students'],
  ['response card', 'response-ready', 'response-card'],
  ['local rules', 'team-limit', 'localEnergyLimitWh'],
];

describe.each(editions)('edition $edition', ({ content }) => {
  it.each(MATTERS)('asks about %s', (_, id, sets) => {
    const question = content.questions.find((candidate) => candidate.id === id);
    expect(question).toBeDefined();
    if (question !== undefined) expect([...controlsSetBy(question), ...inputsSetBy(question)]).toContain(sets);
  });

  it('says why each question is asked, what good looks like and what it rests on', () => {
    for (const question of content.questions) {
      expect([question.id, question.why.length > 5, question.good.length > 1, question.source.length > 5]).toEqual([question.id, true, true, true]);
    }
  });
});
