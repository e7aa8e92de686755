import { describe, expect, it } from 'vitest';
import { edition1 } from '@/lib/content/edition-1';
import type { AssessmentDocument } from '@/lib/core/document';
import type { ScoreResult } from '@/lib/core/result';
import { score } from '@/lib/core/score';
import { displayWidth } from '@/lib/report/text/display-width';
import { textTable } from '@/lib/report/text-table';
import { REFERENCE_VENUES, referenceDocument, type ReferenceVenue } from '@/tests/support/reference-venues';

const scored = (document: AssessmentDocument): ScoreResult => score(edition1, document, { seed: 7, draws: 200, inputHash: 'a1b2c3d4e5f60718' });
const venues = new Map(REFERENCE_VENUES.map((venue) => [venue, scored(referenceDocument(venue))]));
function resultOf(venue: ReferenceVenue, changes?: Partial<AssessmentDocument>): ScoreResult {
  const plain = changes === undefined ? venues.get(venue) : undefined;
  return plain ?? scored({ ...referenceDocument(venue), ...changes });
}
const textOf = (result: ScoreResult): string => textTable(result, edition1);
const tooWide = (text: string): readonly string[] => text.split('\n').filter((line) => displayWidth(line) > 80);

describe('the table', () => {
  it.each(REFERENCE_VENUES)('of %s has no line wider than 80 columns', (venue) => {
    expect(tooWide(textOf(resultOf(venue)))).toEqual([]);
  });

  it.each([
    ['East Asian letters', '第三小学校の普通教室、充電台は窓の横にあり、保管庫は廊下の突き当たりにある、定員四十名'],
    ['accents', 'Élèves à côté de la fenêtre où l’on chárge, '.normalize('NFD').repeat(4)],
    ['one long word', 'Sicherheitsbeauftragtenstellvertretung'.repeat(5)],
    ['pictures', '🔋👩‍🏫🇯🇵'.repeat(30)],
  ])('has none with a title in %s either', (_, title) => {
    const text = textOf({ ...resultOf('bad-store'), title });
    expect(tooWide(text)).toEqual([]);
    expect(text.replaceAll(/\s/g, '')).toContain(title.replaceAll(/\s/g, ''));
  });

  it.each([['mil-std-882e', '▲ Serious'], ['three-by-three', '▲ High']] as const)('has none with the matrix %s, and speaks its words: %s', (matrix, word) => {
    const text = textOf(resultOf('bad-store', { matrix }));
    expect(tooWide(text)).toEqual([]);
    expect(text).toContain(word);
  });

  it('has none when nothing is answered', () => {
    const text = textOf(scored({ id: 'empty', title: 'Nothing answered', answers: {} }));
    expect(tooWide(text)).toEqual([]);
    expect(text).toMatch(/Not ready to sign: 5 stop conditions hold\./);
    expect(text).toMatch(/ASSUMED, BECAUSE IT WAS NOT GIVEN/);
  });

  it('begins with the verdict, and puts stop conditions before the ranking', () => {
    const text = textOf(resultOf('bad-store'));
    expect(text.split('\n')[1]).toMatch(/^Not ready to sign: 15 stop conditions hold\. The worst grade is Extreme/);
    expect(text.indexOf('STOP CONDITIONS')).toBeLessThan(text.indexOf('RISKS, MOST HARM FIRST'));
  });

  it('never calls a venue safe', () => {
    for (const venue of REFERENCE_VENUES) expect(textOf(resultOf(venue))).not.toMatch(/\bsafe\b/i);
  });

  it('says that no stop condition holds, and leaves their part out', () => {
    const text = textOf(resultOf('good-hall'));
    expect(text.split('\n')[1]).toMatch(/^No stop condition holds\. The worst grade is Moderate/);
    expect(text).not.toMatch(/STOP CONDITIONS/);
  });

  it('shows why each stop condition holds, what settles it and which action would', () => {
    const result = resultOf('everything');
    const text = textOf(result).replaceAll(/\s+/g, ' ');
    for (const stop of result.stops) for (const words of [stop.title, stop.why, stop.settledBy]) expect(text).toContain(words);
    expect(text).toContain('Action: A means to raise the alarm within reach (1 h, petty cash)');
  });

  it('ranks every risk that applies, and names those that do not', () => {
    const result = resultOf('ordinary-classroom');
    const text = textOf(result);
    const flat = text.replaceAll(/\s+/g, ' ');
    for (const risk of result.risks) expect(flat).toContain(risk.title);
    expect(text.match(/about (once in|\d)/g)?.length).toBeGreaterThanOrEqual(17);
    expect(text).toContain('Do not apply here: Packs carried by air against the rules');
  });

  it('sets today beside the plan when there is one, and beside nothing done when there is none', () => {
    expect(textOf(resultOf('everything'))).toMatch(/ today {7}planned {5}risk[^\n]*\n 1 {2}▲ High {6}◐ Moderate {2}A pack vents or burns on charge/);
    expect(textOf(resultOf('ordinary-classroom'))).toMatch(/ bare {8}today {7}risk[^\n]*\n 1 {2}⬢ Extreme {3}▲ High {6}A pack vents or burns on charge/);
  });

  it('adds what a mild grade hides: that it could kill', () => {
    expect(textOf(resultOf('ordinary-classroom')).replaceAll(/\s+/g, ' ')).toMatch(/A pack vents in a vehicle or bag about once in [^;]*; could kill/);
  });

  it('lists the best set, and says so when nothing fits', () => {
    const result = resultOf('bad-store');
    const text = textOf(result).replaceAll(/\s+/g, ' ');
    for (const control of result.bestSet.controls) expect(text).toContain(edition1.controls.find(({ id }) => id === control)?.title);
    expect(textOf(resultOf('bad-store', { effortBudget: 0 }))).toContain('Nothing that lowers the harm fits into 0 points of effort.');
  });

  it('has smoke in the charging room in a sentence, with its range and whether people are out', () => {
    const text = textOf(resultOf('bad-store')).replaceAll(/\s+/g, ' ');
    expect(text).toContain('4 packs burn in 20 m³ with 0.3 air changes an hour: HF rises to 310 ppm (61 to 610)');
    expect(text).toContain('everybody is out after 3 min');
  });

  it('ends with what it was computed from and the caution', () => {
    const text = textOf(resultOf('good-hall'));
    expect(text).toContain('input a1b2c3d4e5f6, seed 7, 200 draws.');
    expect(text.replaceAll('\n', ' ').trimEnd().endsWith(edition1.note)).toBe(true);
  });

  it('prints remarks on the document', () => {
    const text = textTable(resultOf('good-hall'), edition1, { remarks: [{ path: '$.answers["room-size"]', remark: 'is not used' }] });
    expect(text).toContain(' -  $.answers["room-size"] is not used');
  });
});
