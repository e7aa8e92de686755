import { describe, expect, it } from 'vitest';
import { editionAsked } from '@/app/method/_words/edition-words';
import { formulaWords } from '@/app/method/_words/formula-words';
import { ruleWords } from '@/app/method/_words/rule-words';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import { currentContent, editions } from '@/lib/content/editions';
import { quantityWords } from '@/lib/wording/quantities';

/** A name as the calculation writes it: "peakHeatRelease", "tau_n". */
const CODE = /\b(?!kW)[a-z]+[A-Z]\w*|\w+_\w+/;

describe('the method in words', () => {
  it('leaves no name of the calculation in a rule or a formula', () => {
    for (const content of [edition1, edition2]) {
      const words = ruleWords(content);
      const all = [...words.smoke, ...words.heat, ...words.packs, ...content.exposures.map((exposure) => formulaWords(content, exposure.formula))];
      expect(all.filter((sentence) => CODE.test(sentence))).toEqual([]);
    }
  });

  it('keeps a formula so that it can be worked out by hand', () => {
    expect(formulaWords(edition2, 'packs * max(0, 365 - 3 * sessions)')).toBe('packs owned × the most of (0; 365 − 3 × sessions in a season)');
  });

  it('names every physical number of both editions', () => {
    for (const content of [edition1, edition2]) {
      for (const { id } of [...content.physics, ...content.constants]) expect(quantityWords(id), id).toMatch(/^[a-z].{5,}/);
    }
    expect(quantityWords('nonsense')).toBeUndefined();
  });

  it('says the numbers of the edition it speaks of', () => {
    const hotter = { ...edition2, constants: edition2.constants.map((one) => (one.id === 'woodIgnition' ? { ...one, value: 10 } : one)) };
    expect(ruleWords(hotter).heat.join(' ')).toContain('10 kW/m²');
    expect(ruleWords(edition2).packs.join(' ')).toContain('joined on one charger output');
    expect(ruleWords(edition1).packs.join(' ')).not.toContain('joined on one charger output');
  });
});

describe('the edition an address asks for', () => {
  it('is that edition where it was published, else the one in force', () => {
    expect(editionAsked('1')).toEqual({ number: 1, content: edition1, inForce: false });
    for (const asked of [undefined, '', '99', '-1', '1e0', ['1'], 'first']) expect(editionAsked(asked)).toMatchObject({ content: currentContent, number: editions.length, inForce: true });
  });
});
