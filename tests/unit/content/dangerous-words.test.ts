import { describe, expect, it } from 'vitest';
import { dangerousSentences } from '@/tests/support/texts/dangerous-words';
import { numberToCall, orderIntoDanger } from '@/tests/support/texts/orders-into-danger';
import { projectPassages } from '@/tests/support/texts/project-texts';
import { notReviewed, outOfDate, readReviewed } from '@/tests/support/texts/reviewed-sentences';
import { sentencesOf } from '@/tests/support/texts/sentences';
import { passagesOfJson } from '@/tests/support/texts/texts-of-json';
import { textsOfMarkdown, textsOfMarkup } from '@/tests/support/texts/texts-of-markup';
import { textsOfTypeScript } from '@/tests/support/texts/texts-of-typescript';

const passages = projectPassages(process.cwd());
const found = dangerousSentences(passages);
const reviewed = readReviewed(process.cwd());
const wordsIn = (...texts: string[]) => dangerousSentences([{ file: 'a', sentences: texts.flatMap(sentencesOf) }]).map(({ word }) => word);

describe('a sentence with a word that could send somebody towards a pack', () => {
  it('was read and judged, every one of them', () => { expect(notReviewed(found, reviewed)).toEqual([]); });

  it('is judged anew when it changes', () => { expect(outOfDate(found, reviewed)).toEqual([]); });

  it('stands in the first edition alone when it was found wrong', () => {
    const wrong = new Set(Object.values(reviewed.files).flat().filter(({ verdict }) => verdict === 'superseded').map(({ sentence }) => sentence));
    const elsewhere = passages.filter(({ file }) => !file.startsWith('lib/content/edition-1/')).flatMap(({ file, sentences }) => sentences.filter((sentence) => wrong.has(sentence)).map((sentence) => `${file}: ${sentence}`));
    expect(elsewhere).toEqual([]);
  });
});

describe('every text a user may see', () => {
  it('tells nobody to fight, approach, enter, fetch or put out', () => {
    expect(passages.flatMap(({ file, sentences }) => sentences.filter(orderIntoDanger).map((sentence) => `${file}: ${sentence}`))).toEqual([]);
  });

  it('names no number of one country to call', () => {
    expect(passages.flatMap(({ file, sentences }) => sentences.filter(numberToCall).map((sentence) => `${file}: ${sentence}`))).toEqual([]);
  });
});

describe('the reader', () => {
  it('reads every kind of file that has words for people', () => {
    const files = new Set(passages.map(({ file }) => file));
    for (const file of ['lib/content/edition-1/questions.json', 'lib/content/edition-2/guidance.json', 'app/page.tsx', 'lib/wording/severity.ts', 'docs/interchange.md']) expect(files).toContain(file);
  });

  it.each([
    ['Fetch the pack.'], ['It smokes. Carry it out.'], ['Pour sand on the fire.'], ['Unplug a hot pack first.'], ['Put the flames out.'], ['Put it out if it burns.'],
    ['Pick it up while the battery hisses.'], ['Lift a swollen pack.'], ['Smother flames.'], ['Use the extinguisher on the battery.'], ['Open the steel box if it is hot.'], ['Go back for the packs.'],
    ['Move it. It burns.'], ['Throw a wet blanket over the pack.'], ['Look inside when it vents.'], ['Take the packs out of the smoke.'], ['Stay with the burning pack.'],
  ])('sees %s', (text) => { expect(wordsIn(text)).toHaveLength(1); });

  it('joins what stands in different texts of one passage, and keeps passages apart', () => {
    expect(wordsIn('The pack smokes.', 'Fetch it.')).toEqual(['Fetch']);
    expect(wordsIn('The table wobbles.', 'Move it.')).toEqual([]);
    expect(passagesOfJson({ list: [{ id: 'a', lines: [{ lead: 'It smokes.' }, { text: 'Fetch it.' }] }, { id: 'b', why: 'Move it.' }] }))
      .toEqual([['It smokes.', 'Fetch it.'], ['Move it.']]);
  });

  it('reads JSX as it is seen, with both arms of a choice', () => {
    const source = 'const a = <p>Do <b>not</b> carry the {name}. {hot ? "Carry it out." : `Move ${n} packs`}</p>;';
    expect(textsOfTypeScript('a.tsx', source)).toEqual(['Do not carry the …. …', 'Carry it out.', 'Move … packs']);
  });

  it('reads markup and Markdown without tags, scripts and code', () => {
    expect(textsOfMarkup('<svg><title>A pack</title><script>fetch("x y")</script><text>It &amp; <tspan>smoke</tspan></text></svg>')).toEqual(['A pack', 'It & smoke']);
    expect(textsOfMarkdown('# A pack\n\n- Carry **it**\n- Leave it\n\n```\nmove it\n```\n')).toEqual(['A pack', '- Carry it', '- Leave it']);
  });

  it('ends no sentence at initials or a short unit', () => {
    expect(sentencesOf('Tell R. O. now. At least 3 m (10 ft.) away. "Leave." Nobody stays.')).toEqual(['Tell R. O. now.', 'At least 3 m (10 ft.) away.', '"Leave."', 'Nobody stays.']);
  });

  it.each([
    ['Do not fight a battery fire.', undefined], ['Nobody goes back in.', undefined], ['Go back in and look.', 'Go back'], ['Fight it with sand.', 'Fight'], ['Approach slowly.', 'Approach'],
    ['An adult enters the room.', 'enters the room'], ['Go in, but do not stay.', 'Go in'], ['Enter a number in digits.', undefined], ['Only named people go in.', undefined], ['Put the fire out.', 'Put the fire out'], ['Every pack goes back to storage charge.', undefined], ['Sand neither cools nor puts out a pack.', undefined],
  ])('knows an order into danger: %s', (sentence, order) => { expect(orderIntoDanger(sentence)).toBe(order); });

  it.each([
    ['Call 000 now.', '000'], ['Dial 911.', '911'], ['Call the fire service on 118.', 'Call the fire service on 118'], ['From outside, call {number}.', undefined],
    ['At 1,000 packs and 110 W.', undefined], ['Once in 1000 seasons, 999.5 ppm.', undefined],
  ])('knows a number to call: %s', (sentence, number) => { expect(numberToCall(sentence)).toBe(number); });

  it('tells what to do about a new sentence, and about one that is gone', () => {
    const one = { file: 'app/a.tsx', sentence: 'Carry the pack.', word: 'Carry' };
    const list = { note: '', files: { 'app/b.tsx': [{ sentence: 'Move the pack.', verdict: 'safe' as const, why: 'a reason of some length' }] } };
    expect(notReviewed([one], list)).toEqual([expect.stringMatching(/^app\/a\.tsx says "Carry".*reword it.*reviewed-sentences\.json/)]);
    expect(outOfDate([one], list)).toEqual([expect.stringMatching(/^app\/b\.tsx no longer says "Move the pack\."/)]);
  });
});
