import { describe, expect, it } from 'vitest';
import { briefingSheet } from '@/lib/papers/briefing-sheet';
import type { EventFacts } from '@/lib/papers/event/facts';
import { eventPaper } from '@/lib/papers/event-paper';
import { packList } from '@/lib/papers/pack-list';
import { type Paper, wordsOf } from '@/lib/papers/paper';
import { responseCard } from '@/lib/papers/response-card';
import { VENUE_CAUTION } from '@/lib/wording/caution';
import { areaFact, eventFacts, packFacts, wordsOfPlace } from '../../support/event-facts';

const facts = eventFacts();
const words = (paper: Paper): string => wordsOf(paper).join('\n');
const cover = (over: Partial<EventFacts>): string => words({ ...eventPaper(eventFacts(over)), sections: [], signatures: [] });
const section = (id: string, over: Partial<EventFacts> = {}): string => { const paper = eventPaper(eventFacts(over)); return words({ ...paper, cover: [], signatures: [], sections: paper.sections.filter((one) => one.id === id) }); };
const times = (all: string, part: string): number => all.split(part).length - 1;

describe('the cover of a venue’s file', () => {
  it('says first that nothing leaves while a line of the check fails or is not known', () => {
    const failing = facts.checks.map((line) => (line.id === 'checked' ? { ...line, state: 'failing' as const } : line));
    expect(cover({ checks: failing })).toContain('Nothing leaves and nothing is charged yet');
    expect(cover({ checks: failing.map((line) => ({ ...line, state: line.state === 'failing' ? 'not known' as const : line.state })) })).toContain('One line of the check before it leaves is open');
    expect(cover({})).toContain('May be held as described, with one line accepted');
  });
  it('says first that no signed assessment stands behind it', () => {
    expect(cover({ assessment: null })).toContain('No signed assessment of this place stands behind this file.');
    expect(cover({ assessment: null })).toContain('nobody has assessed it');
    expect(section('risks', { assessment: null })).toContain('Nobody has assessed this place');
  });
  it('prints an acceptance with its reason and who agreed, on the first page', () => {
    expect(cover({})).toContain('Accepted by Γιώργος Νικολάου: It covers 14 people');
    expect(cover({})).toContain('Reason: Two of them stay in the hall.');
    expect(cover({})).toContain('Accepted with the assessment: No net above the arena');
  });
  it('says where acceptances stand when they are too long for one page', () => {
    const long = { id: 'covers', group: 'The place', state: 'accepted' as const, words: 'It covers fewer people.', accepted: { reason: 'Because of this. '.repeat(70), by: 'Γιώργος Νικολάου' } };
    expect(cover({ checks: [long, long] })).toContain('2 lines of the check and one stop condition of the place accepted in writing.');
    expect(section('check', { checks: [long] })).toContain(long.accepted.reason);
  });
  it('says of a copy that is not signed that it permits nothing', () => { expect(cover({ state: 'draft' })).toContain('This copy permits nothing'); });
  it('counts unknown energy as unknown, never as nothing', () => {
    const packs = [...packFacts(17), ...packFacts(1, { label: 'HW-999', energyWh: null })];
    expect(cover({ packs })).toContain('213.9 Wh without one pack of unknown energy');
    expect(cover({ packs: packFacts(3, { energyWh: null }) })).toContain('energy not known');
    expect(section('packs', { packs })).toContain('not known');
  });
});

describe('the sections', () => {
  it('name every adult once with part and telephone, and who may stop the match', () => {
    const adults = section('contacts').split('Venue and school')[0] ?? '';
    for (const { name } of facts.adults) expect(times(adults, name), name).toBe(1);
    expect(times(adults, 'STOP: may stop the match')).toBe(2);
    expect(section('contacts')).toContain('Żaneta Öztürk');
    expect(section('contacts', { adults: [] })).toContain('May stop the match at any time: NOT FILLED IN');
    expect(section('contacts', { adults: [] })).toContain('First aid: nobody is named.');
  });
  it('name every risk once, with its grade and that it could kill', () => {
    for (const { title } of facts.assessment?.risks ?? []) expect(times(section('risks'), title), title).toBe(1);
    expect(section('risks')).toContain('could kill');
  });
  it('draw only rooms whose length and width are known, and say which are not drawn', () => {
    const figure = eventPaper(facts).sections.find(({ id }) => id === 'room')?.blocks.find((block) => block.kind === 'figure');
    expect(figure?.kind === 'figure' ? figure.scene.title : '').toContain('A, charging, 8.2 m by 6 m; B, store, 3 m by 2 m; C, arena, 30 m by 18 m');
    expect(section('room')).toContain('Not drawn: D Yard, 5 m from the wall (outdoors).');
    const unknown = section('room', { site: { ...facts.site, areas: [areaFact({ name: 'Hall', lengthM: 8 })] } });
    expect(unknown).toContain('No room is drawn, because no size is known. Not drawn: A Hall (size not known).');
    expect(unknown).toContain('8 m by NOT FILLED IN, NOT FILLED IN high');
    expect(unknown).toContain('Nobody described: store; arena; outdoor spot for suspect packs.');
  });
  it('measure in feet where the school does', () => {
    expect(section('room', { units: 'us' })).toContain('26.9 ft by 19.7 ft');
  });
  it('say what is still open between venue and team, and what nobody wrote', () => {
    expect(section('conditions')).toContain('One condition is still OPEN');
    expect(times(section('conditions'), '\nOPEN')).toBe(1);
    const own = { site: { ...facts.site, kind: 'own' as const }, provides: [{ id: 'net', words: 'A net all round', stands: false, said: 'partly' }] };
    expect(section('conditions', own)).toContain('One condition is not wholly in place, as the signed assessment of our own hall says');
    expect(section('conditions', own)).not.toContain('OPEN');
    expect(section('room')).toContain('NOT FILLED IN');
  });
  it('say of each line of the check how it stands', () => {
    for (const { words: line } of facts.checks) expect(times(section('check'), line), line).toBe(1);
    expect(section('check')).toContain('3 lines: 2 in order, 1 accepted in writing, 0 open');
  });
  it('tell the rules of the air, and where they are known from, only where somebody flies', () => {
    const air = { ...facts.travel, byAir: true, airRules: [{ rule: 'Spare packs in hand luggage', source: 'rule book, edition 66', read: 'from memory' as const }] };
    expect(section('travel', { travel: air })).toContain('from memory');
    expect(section('travel', { travel: air })).toContain('Ask the carrier');
    expect(section('travel')).not.toContain('In an aeroplane');
    expect(section('travel', { travel: { ...air, byRoad: false } })).not.toContain('Packs on the road');
  });
  it('say what becomes of a damaged pack there and where packs are at night', () => {
    expect(section('travel')).toContain('never in the bus');
    expect(section('travel')).toContain('they go home the same day');
  });
  it('name what comes before the file, for both houses', () => {
    expect(section('cautions')).toContain('The safety officer of Halle am Weiher.');
    expect(section('cautions')).toContain('The safety officer of Heron Weir School.');
  });
});

describe('the papers of an event', () => {
  const papers = [eventPaper(facts), responseCard(facts), packList(facts), briefingSheet(facts)];
  it('are the same for the same facts, and never say undefined or NaN', () => {
    expect([eventPaper(facts), responseCard(facts), packList(facts), briefingSheet(facts)]).toEqual(papers);
    for (const paper of papers) expect(words(paper)).not.toMatch(/undefined|NaN|\[object|null/);
  });
  it('defer on every page to both safety officers, and lead to a page with the same words each', () => {
    for (const paper of papers) expect(paper.caution).toBe(VENUE_CAUTION);
    expect(papers.map(({ twinAt }) => twinAt)).toEqual([facts.readAt.event, facts.readAt['response card'], facts.readAt['pack list'], facts.readAt.briefing]);
  });
  it('are signed by both for the file alone', () => {
    expect(papers.map(({ signatures }) => signatures.map(({ field }) => field))).toEqual([['Preparer', 'Officer'], [], [], []]);
  });
  it('number no section twice', () => {
    const ids = papers[0]?.sections.map(({ id }) => id) ?? [];
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe('a response card', () => {
  const card = words(responseCard(facts));
  it('has the number, the address and both meeting points of the venue', () => {
    for (const said of ['555 0112', 'Weiherstraße 12, gate 2, hall', 'bicycle stand at the north gate', 'car park of the library', 'Sand is for quiet packs. Smoke is for leaving.']) expect(card).toContain(said);
  });
  it('says so where the venue filled in nothing', () => {
    const site = { ...facts.site, emergencyNumber: null, meetingPlace: null, secondMeetingPlace: null, caretakerPhone: null };
    const empty = words(responseCard(eventFacts({ site, guidance: wordsOfPlace(site, '') })));
    for (const said of ['your local emergency number (not set here)', 'no meeting point is set', 'Caretaker: NOT FILLED IN']) expect(empty).toContain(said);
  });
  it('has a drawing for each step', () => {
    const steps = responseCard(facts).cover.find((block) => block.kind === 'steps');
    expect(steps?.kind === 'steps' ? steps.items.map(({ picture }) => picture.marks.length > 0) : []).toEqual([true, true, true, true, true]);
  });
});

describe('a briefing sheet', () => {
  it('names no person, and has places for initials', () => {
    const sheet = briefingSheet(facts);
    for (const { name } of [...facts.adults, facts.preparer, facts.officer]) expect(words(sheet)).not.toContain(name);
    expect(sheet.cover.some((block) => block.kind === 'initials' && block.places > 30)).toBe(true);
  });
});
