import type { Content } from '@/lib/content/model';

const TOKEN = /[A-Za-z]\w*|\d+(?:\.\d+)?|[-+*/(),]/g;
const SIGNS: Readonly<Record<string, string>> = { '*': '×', '/': '÷', '-': '−', '+': '+' };
const FUNCTIONS: Readonly<Record<string, string>> = { min: 'the least of', max: 'the most of', ceil: 'rounded up' };

/**
 * A formula of the content with the names of its figures in words: "packs * sessions" becomes "packs owned ×
 * sessions in a season". Brackets and order stay as they are, so it can still be worked out by hand.
 */
export function formulaWords({ inputs, exposures }: Pick<Content, 'inputs' | 'exposures'>, formula: string): string {
  const titleOf = (name: string): string => [...inputs, ...exposures].find((one) => one.id === name)?.title ?? name;
  const words = [...formula.matchAll(TOKEN)].map(([token]) => SIGNS[token] ?? FUNCTIONS[token] ?? (/^[A-Za-z]/.test(token) ? titleOf(token) : token));
  return words.join(' ').replace(/\( /g, '(').replace(/ \)/g, ')').replace(/ ,/g, ';');
}
