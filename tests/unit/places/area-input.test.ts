import { describe, expect, it } from 'vitest';
import { airEstimate, volumeM3 } from '@/lib/places/air-estimate';
import { AreaInputSchema } from '@/lib/places/area-input';
import { addSite, changeArea } from '@/lib/places/decide-place';
import type { AreaDetails } from '@/lib/places/place';
import { SiteInputSchema } from '@/lib/places/site-input';
import { writeMeasure } from '@/lib/places/typed-measure';
import { currentContent } from '@/lib/content/editions';
import { cubicFeetPerMinute, feet, inFeet } from '@/lib/units/us-customary';
import { expectWithin } from '@/tests/support/expect-within';
import { areaForTest, siteForTest } from '@/tests/support/place-for-tests';

const TYPED = { units: 'metric', use: 'charging', name: 'Table', outdoors: 'no' };
const read = (given: Record<string, string>): AreaDetails => AreaInputSchema.parse({ ...TYPED, ...given });
const faults = (given: Record<string, string>) => AreaInputSchema.safeParse({ ...TYPED, ...given }).error?.issues.map((issue) => [issue.path[0], issue.message]);

describe('US customary units', () => {
  it('are exact by definition', () => {
    // International foot 0.3048 m, agreement of 1959 (MEM); 1 ft³/min = 0.3048³ · 60 m³/h, computed.
    expectWithin(feet(10), 3.048, { abs: 1e-12 });
    expectWithin(inFeet(feet(7.5)), 7.5, { abs: 1e-12 });
    expectWithin(cubicFeetPerMinute(100), 169.901, { abs: 1e-3 });
  });
});

describe('an area as it is typed', () => {
  it('is kept in metres, whatever it was typed in, and shown again as it was', () => {
    const us = read({ units: 'us', lengthM: '30', airMode: 'fan', airFlowM3PerH: '100', heightM: '9,5' });
    expectWithin(us.lengthM ?? 0, 9.144, { abs: 1e-9 });
    expectWithin(us.heightM ?? 0, 2.8956, { abs: 1e-9 });
    expectWithin(us.airFlowM3PerH ?? 0, 169.901, { abs: 1e-3 });
    expect([writeMeasure('lengthM', us.lengthM, 'us'), writeMeasure('lengthM', us.lengthM, 'metric'), writeMeasure('airFlowM3PerH', us.airFlowM3PerH, 'us')]).toEqual(['30', '9.14', '100']);
  });

  it('keeps what nobody knows as not known, never as 0', () => {
    expect(read({})).toMatchObject({ lengthM: null, exits: null, peoplePresent: null, evacuationS: null, airMode: null, detectors: null, personDistanceM: null });
    expect(read({ personDistanceM: '0', exits: '0' })).toMatchObject({ personDistanceM: 0, exits: 0 });
  });

  it('takes the time to leave in minutes and seconds', () => {
    expect(read({ evacuationMin: '2', evacuationS: '5' }).evacuationS).toBe(125);
    expect(read({ evacuationS: '40' }).evacuationS).toBe(40);
    expect(faults({ evacuationMin: '0', evacuationS: '0' })).toEqual([['evacuationS', 'Nobody is out in no time: leave both empty when it was never timed']]);
  });

  it('names each faulty field in the units of the form', () => {
    expect(faults({ lengthM: '300', exits: '1.5', name: ' ' })).toEqual([['name', 'Enter a name, such as Charging table or Cupboard A']]);
    expect(faults({ lengthM: '300', exits: '1.5' })).toEqual([['lengthM', 'Enter a number from 0.5 to 200 m'], ['exits', 'Enter a whole number']]);
    expect(faults({ units: 'us', lengthM: '3000', airMode: 'fan' })).toEqual([['lengthM', 'Enter a number from 1.64 to 656.17 ft']]);
  });

  it('drops what its use does not ask, so that no room is kept of a spot outdoors', () => {
    expect(read({ use: 'isolation', outdoors: 'yes', lengthM: '3', peoplePresent: '4', combustibleDistanceM: '5' })).toMatchObject({ lengthM: null, peoplePresent: null, combustibleDistanceM: 5 });
    expect(read({ outdoors: 'yes', airMode: 'closed', surface: 'metal', lengthM: '3' })).toMatchObject({ airMode: null, lengthM: null, surface: 'metal' });
  });
});

describe('the air of an area', () => {
  const room = areaForTest({ lengthM: 10, widthM: 6, heightM: 3 });

  it('is what somebody measured, or a flow over the volume', () => {
    expect(volumeM3(room)).toBe(180);
    expect(airEstimate(currentContent, { ...room, airMode: 'measured', airChangesPerHour: 2 })).toMatchObject({ low: 2, mid: 2, high: 2 });
    // Computed: 360 m³/h in 180 m³.
    expectWithin(airEstimate(currentContent, { ...room, airMode: 'fan', airFlowM3PerH: 360 })?.mid ?? 0, 2, { abs: 1e-12 });
  });

  it('is a range by the content where only the windows are known', () => {
    expect(airEstimate(currentContent, { ...room, airMode: 'closed' })).toMatchObject({ low: 0.2, mid: 0.3, high: 0.5 });
    expect(airEstimate(currentContent, { ...room, airMode: 'fan' })).toMatchObject({ low: 2, mid: 4, high: 10 });
  });

  it('through a gap grows with it, and never falls below a closed room', () => {
    const gap = (openingWidthM: number) => airEstimate(currentContent, { ...room, airMode: 'openings', openingWidthM, openingHeightM: 1 });
    // Computed: ½ · 1 m² · √(0.001·1² + 0.0035·1·5 + 0.01) · 3600 / 180 = 1.688 an hour (de Gids and Phaff, REFERENCES H, READ-S).
    expectWithin(gap(1)?.mid ?? 0, 1.688, { rel: 1e-3 });
    expect(gap(1)?.low).toBeLessThan(gap(1)?.mid ?? 0);
    expect(gap(1)?.high).toBeGreaterThan(gap(1)?.mid ?? 0);
    expectWithin(gap(0.01)?.mid ?? 0, 0.3, { abs: 1e-12 });
  });

  it('is nothing outdoors, and nothing while it is not known', () => {
    expect(airEstimate(currentContent, { ...room, outdoors: true, airMode: 'closed' })).toBeNull();
    expect(airEstimate(currentContent, room)).toBeNull();
    expect(airEstimate(currentContent, { ...room, airMode: 'openings' })).toBeNull();
    expect(airEstimate(currentContent, { ...room, heightM: null, airMode: 'openings', openingWidthM: 1, openingHeightM: 1 })).toBeNull();
  });
});

describe('a site', () => {
  it('is read, with the number of an away venue held to digits', () => {
    const typed = { name: 'Riverside', kind: 'away', address: '2 River Road' };
    expect(SiteInputSchema.parse(typed)).toMatchObject({ emergencyNumber: null, keyHolder: null });
    expect(SiteInputSchema.safeParse({ ...typed, emergencyNumber: 'on the card by the door' }).success).toBe(false);
  });

  it('has a name of its own, and is changed from what was read', () => {
    const site = siteForTest();
    expect(addSite('s2', site, ['main HALL '])).toMatchObject({ ok: false, faults: [{ field: 'name' }] });
    expect(addSite('s2', site, ['Gym'])).toMatchObject({ ok: true, events: [{ kind: 'site.added', subjectId: 's2' }] });
    const area = areaForTest({ lengthM: 10 });
    expect(changeArea(area, { ...area, lengthM: 12 }, 1, [])).toMatchObject({ ok: true, events: [{ kind: 'area.changed', data: { changes: { lengthM: { from: 10, to: 12 } } } }] });
    expect(changeArea(area, area, 0, [])).toMatchObject({ ok: false, faults: [{ field: null }] });
  });
});
