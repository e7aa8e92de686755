import type { Content, InputValue } from '@/lib/content/model';
import { evaluateFormula } from './formula';

/**
 * Exposure of every base in its own unit per season: potential, before controls (amendment A9). A name in
 * a formula is an input first, then an exposure; a figure written over flows into the exposures that
 * name it, never into inputs (A46).
 * @param overrides counted figures of the document, 0 or more
 * @returns one finite figure, 0 or more, for each base
 * @throws when a formula names nothing known: a fault of the content
 */
export function resolveExposures(
  content: Content,
  inputs: ReadonlyMap<string, InputValue>,
  overrides: Readonly<Record<string, number>>,
): ReadonlyMap<string, number> {
  const definitions = new Map(content.exposures.map((exposure) => [exposure.id, exposure]));
  const figureOf = (id: string, asking: readonly string[]): number => {
    const override = Object.hasOwn(overrides, id) ? overrides[id] : undefined;
    if (override !== undefined) return override;
    const definition = definitions.get(id);
    if (definition === undefined) throw new Error(`no exposure ${id}`);
    if (asking.includes(id)) throw new Error(`exposure ${id} is defined by itself`);
    return Math.max(0, evaluateFormula(definition.formula, (name) => {
      const input = inputs.get(name);
      if (typeof input === 'number') return input;
      return figureOf(name, [...asking, id]);
    }));
  };
  return new Map(content.exposures.map((exposure) => [exposure.id, figureOf(exposure.id, [])]));
}
