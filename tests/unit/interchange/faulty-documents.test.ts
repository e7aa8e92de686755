import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import type { Content } from '@/lib/content/model';
import { readAssessment } from '@/lib/interchange/read-assessment';

const FOLDER = 'tests/reference-data/faulty';

type Faults = Readonly<Record<string, readonly (readonly [path: string, problem: string, expected: string])[]>>;

/** Each document has one kind of fault, some of them several times: place, what is wrong, what would be right. */
const FAULTS: Faults = {
  '01-no-format.json': [
    ['$.format', 'is missing', '"sandbucket-assessment.v1"'],
  ],
  '02-wrong-format.json': [
    ['$.format', 'is the text "sandbucket-assessment.v2"', '"sandbucket-assessment.v1"'],
    ['$.contentVersion', 'is the text "7.0.0"', 'one of "0.1.0", or nothing for the edition it is read with'],
  ],
  '03-cut-short.json': [
    ['$', 'line 21, column 1: the document ends too early', 'a name in double quotes; no comma after the last entry'],
  ],
  '04-trailing-comma.json': [
    ['$', 'line 10, column 3: "}" cannot stand here', 'a name in double quotes; no comma after the last entry'],
  ],
  '05-name-twice.json': [
    ['$.answers["team-packs"].packs', 'is given more than once', 'each name once'],
  ],
  '06-not-a-number.json': [
    ['$.answers["room-size"].chargingVolume', 'is NaN, which JSON does not have', 'a finite number, such as 0.25'],
    ['$.answers["room-people"].peopleRoom', 'is a number too large to be held', 'a finite number, such as 0.25'],
    ['$.answers["room-leave"].chargingEvac', 'is -Infinity, which JSON does not have', 'a finite number, such as 0.25'],
  ],
  '07-question-mistyped.json': [
    ['$.answers["tabel-surface"]', 'is not a question of the content', '"table-surface" was probably meant'],
    ['$.answers["roof-colour"]', 'is not a question of the content', 'the id of a question of the content; "npm run content" prints them all'],
  ],
  '08-option-unknown.json': [
    ['$.answers["room-where"]', 'is the text "not sure"', 'one of "indoor", "outdoor"'],
    ['$.answers["table-surface"]', 'is the text "marble"', 'one of "yes", "partly", "no", "not sure"'],
  ],
  '09-ticks-wrong.json': [
    ['$.answers["store-keep"]', 'is the text "none"', 'a list of any of "cool", "locked", [] for none of them, or "not sure"'],
    ['$.answers["people-kit"][1]', 'is "tidy" a second time', 'each option at most once'],
    ['$.answers["people-kit"][2]', 'is the text "hats"', 'one of "caps", "case", "tidy", "guard", "warning"'],
    ['$.answers["electric-kit"]', 'is the text "guard"', 'a list of any of "sum", "wall", "guard", "switch", [] for none of them, or "not sure"'],
  ],
  '10-out-of-range.json': [
    ['$.answers["team-packs"].packs', 'is 401', 'a number from 1 to 400 packs'],
    ['$.answers["team-use"].crashShare', 'is 31', 'a number from 0 to 1'],
    ['$.answers["room-size"].chargingVolume', 'is -3', 'a number from 4 to 50,000 m³'],
    ['$.answers["room-leave"].chargingEvac', 'is 5', 'a number from 15 to 1,800 s'],
  ],
  '11-wrong-types.json': [
    ['$.id', 'is 14', 'one line of plain text of 1 to 100 characters'],
    ['$.title', 'is the text ""', 'one line of plain text of 1 to 200 characters'],
    ['$.planned', 'is the text "charge-box"', 'a list of at most 200 control ids'],
    ['$.answers["response-number"]', 'is 112', 'one line of text of at most 200 characters, or "not sure"'],
    ['$.answers["room-size"].chargingVolume', 'is the text "180"', 'a number from 4 to 50,000 m³'],
    ['$.answers["room-people"]', 'is 16', 'an object with numbers for "peopleRoom", "peopleNear", or "not sure"'],
  ],
  '12-tick-both-ways.json': [
    ['$.notSureTicks["people-kit"][0]', 'is the text "warning", which is ticked in the answer too', 'ticked or not sure, not both'],
    ['$.notSureTicks["table-surface"]', 'belongs to a question that takes one answer', '"not sure" as the answer to "table-surface"'],
    ['$.notSureTicks["electric-kit"][0]', 'is the text "plug"', 'one of "sum", "wall", "guard", "switch"'],
  ],
  '13-unknown-ids.json': [
    ['$.inputs.windspeed', 'is not an input of the content', 'the id of an input of the content; "npm run content" prints them all'],
    ['$.exposures.charge', 'is not an exposure of the content', '"charges" was probably meant'],
    ['$.states.chargebox', 'is not a control of the content', '"charge-box" was probably meant'],
    ['$.record["charge-runawy"]', 'is not a scenario of the content', '"charge-runaway" was probably meant'],
    ['$.notes.kitchen', 'is not a question of the content', 'the id of a question of the content; "npm run content" prints them all'],
    ['$.planned[0]', 'is the text "response-dril"', '"response-drill" was probably meant'],
  ],
  '14-planned-twice.json': [
    ['$.effortBudget', 'is -1', 'a number from 0 to 120 points'],
    ['$.seed', 'is 4294967296', 'a whole number from 0 to 4,294,967,295'],
    ['$.planned[2]', 'is "charge-box" a second time', 'each control once'],
  ],
  '15-states-wrong.json': [
    ['$.states["charge-box"]', 'is the text "yes"', 'one of "in place", "partly", "absent", "not sure", "not applicable", or an object with "state" and "reason"'],
    ['$.states["first-aid"].state', 'is the text "there"', 'one of "in place", "partly", "absent", "not sure", "not applicable"'],
    ['$.states["first-aid"].reason', 'is the text ""', 'one line of plain text of 1 to 300 characters'],
    ['$.states.sprinkler.reason', 'is missing', 'one line of plain text of 1 to 300 characters'],
    ['$.states["net-check"].since', 'is not a name of this format', 'only "state" and "reason"'],
  ],
  '16-record-wrong.json': [
    ['$.record["charge-runaway"].events', 'is 1.5', 'a whole number from 0 to 1,000,000'],
    ['$.record["store-runaway"].exposure', 'is 0', 'a number above 0, at most 1,000,000,000'],
    ['$.record["transit-fire"].events', 'is -1', 'a whole number from 0 to 1,000,000'],
    ['$.record["transit-fire"].preventiveProduct', 'is 1.2', 'a number above 0, at most 1'],
    ['$.record["over-discharge"].preventiveProduct', 'is 0', 'a number above 0, at most 1'],
    ['$.record["rotor-strike"]', 'is 3', 'an object with "events", "exposure" and, if known, "preventiveProduct"'],
  ],
  '17-matrix-not-monotone.json': [
    ['$.matrix.words', 'has 2 entries', '3, one for each level in "from"'],
    ['$.matrix.from[2]', 'is 0.05, not above the level before it', 'a number above 0.1'],
    ['$.matrix.cells[1][2]', 'is "low", but the class before it has "moderate"', '"moderate" or worse'],
    ['$.matrix.cells[2][1]', 'is "low", but the rarer level has "moderate"', '"moderate" or worse'],
  ],
  '18-inputs-and-exposures.json': [
    ['$.exposures.handlings', 'is -1', 'a number from 0 to 1,000,000,000'],
    ['$.exposures.charges', 'is the text "many"', 'a number from 0 to 1,000,000,000'],
    ['$.inputs.crashShare', 'is 1.5', 'a number from 0 to 1'],
    ['$.inputs.airMode', 'is the text "breeze"', 'one of "measured", "mechanical", "openings", "closed"'],
    ['$.inputs.chargingOutdoor', 'is 0.5', 'one of 0, 1'],
    ['$.inputs.localNumber', 'holds nothing but blanks', 'one line of text of at most 200 characters'],
    ['$.inputs.packWh', 'is the text "12.58"', 'a number from 1 to 200 Wh'],
  ],
  '19-strangers.json': [
    ['$.__proto__', 'is a name that no document may use', 'another name'],
    ['$.anwsers', 'is not a name of this format', '"answers" was probably meant'],
    ['$.colour', 'is not a name of this format', 'one of "$schema", "format", "id", "title", "contentVersion", "school", "site", "areas", "packs", "preparedBy", "preparedOn", "notes", "answers", "notSureTicks", "exposures", "inputs", "states", "record", "planned", "effortBudget", "matrix", "seed"'],
    ['$.answers.constructor', 'is not a question of the content', 'the id of a question of the content; "npm run content" prints them all'],
  ],
  '20-about-itself.json': [
    ['$.school', 'is the text "Tern Lane\\u0007School"', 'one line of plain text of 1 to 200 characters'],
    ['$.areas[0].use', 'is the text "kitchen"', 'one of "charging", "storage", "arena", "isolation", "disposal", "vehicle"'],
    ['$.packs[0].cells', 'is 4.5', 'a whole number from 1 to 8'],
    ['$.packs[0].colour', 'is not a name of this format', 'only "label", "count", "cells", "capacityMah" and "energyWh"'],
    ['$.preparedBy', 'is the text "Karl Meyer-Lindenberg"', 'initials, at most 8 characters, such as "K. M."'],
    ['$.preparedOn', 'is the text "2026-02-30"', 'a date as year-month-day, such as "2026-11-25"'],
  ],
};

/** What only the second edition asks, or holds to each other. */
const FAULTS_2: Faults = {
  '21-lines-wrong.json': [
    ['$.answers["people-kit"].tidyy', 'is not a line of this question', '"tidy" was probably meant'],
    ['$.answers["people-kit"].guard', 'is the text "mostly"', 'one of "yes", "partly", "no", "not sure"'],
    ['$.answers["people-kit"].hats', 'is not a line of this question', 'one of "caps", "case", "tidy", "guard", "warning", "solder"'],
    ['$.answers["people-kit"].case', 'is 1', 'one of "yes", "partly", "no", "not sure"'],
    ['$.answers["electric-kit"][1]', 'is the text "leakage", a line that no list had', 'a word for each line instead of a list, such as {"leakage": "yes"}'],
    ['$.answers["store-keep"]', 'is the text "yes"', 'an object with "yes", "partly", "no" or "not sure" for any of "cool", "locked", "together", or "not sure" for them all'],
    ['$.answers["response-ready"].drill', 'is true', 'one of "yes", "partly", "no", "not sure"'],
  ],
  '22-line-both-ways.json': [
    ['$.notSureTicks["people-kit"][1]', 'is the text "caps", to which the answer says "yes"', 'one or the other, not both'],
    ['$.notSureTicks["store-keep"][0]', 'is the text "cool", which is ticked in the answer too', 'ticked or not sure, not both'],
    ['$.notSureTicks["room-exits"]', 'belongs to a question that takes one answer', '"not sure" as the answer to "room-exits"'],
    ['$.notSureTicks["electric-kit"]', 'is the text "sum"', 'a list of any of "sum", "wall", "guard", "switch", "kit", "leakage"'],
  ],
  '23-part-over-whole.json': [
    ['$.answers["travel-trips"].warmTrips', 'is 4, more than the 3 trips by road it is a part of', 'a number from 0 to 3, the trips by road'],
  ],
  '24-part-over-whole-by-inputs.json': [
    ['$.answers["travel-trips"].warmTrips', 'is 4, more than the 2 trips by road it is a part of', 'a number from 0 to 2, the trips by road'],
  ],
  '25-both-parts-written-over.json': [
    ['$.inputs.warmTrips', 'is 3, more than the 2 trips by road it is a part of', 'a number from 0 to 2, the trips by road'],
  ],
  '26-earlier-option.json': [
    ['$.answers["room-exits"]', 'is the text "three"', 'one of "yes", "one", "no", "not sure"'],
    ['$.answers["room-size"]', 'is 12', 'an object with numbers for "chargingLength", "chargingWidth", "chargingHeight", or "not sure"'],
  ],
};

const read = (file: string, content: Content) => readAssessment(readFileSync(`${FOLDER}/${file}`, 'utf8'), content);
const faultsOf = (file: string, content: Content): unknown => {
  const result = read(file, content);
  return result.ok ? 'read' : result.faults.map(({ path, problem, expected }) => [path, problem, expected]);
};

describe('a faulty document', () => {
  it.each(Object.keys(FAULTS))('%s has every fault named, and no other', (file) => {
    expect(faultsOf(file, edition1)).toEqual(FAULTS[file]);
  });

  it.each(Object.keys(FAULTS))('%s is refused by the second edition too, at the same places', (file) => {
    const result = read(file, edition2);
    expect(result.ok ? [] : result.faults.map(({ path }) => path)).toEqual(FAULTS[file]?.map(([path]) => path));
  });

  it.each(Object.keys(FAULTS_2))('%s, of the second edition, has every fault named, and no other', (file) => {
    expect(faultsOf(file, edition2)).toEqual(FAULTS_2[file]);
  });

  it('written for a later edition than it is read with says so', () => {
    expect(faultsOf('21-lines-wrong.json', edition1)).toEqual([
      ['$.contentVersion', 'is the text "2.0.0", an edition later than the one it is read with', 'one of "0.1.0", or nothing for the edition it is read with'],
    ]);
  });

  it('is one of those in the folder', () => {
    expect(readdirSync(FOLDER).sort()).toEqual([...Object.keys(FAULTS), ...Object.keys(FAULTS_2)]);
  });
});
