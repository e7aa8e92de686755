import type { Content, InputDefinition, InputValue } from '@/lib/content/model';
import type { AssumedInput } from '@/lib/core/result';
import { evaluateFormula } from './formula';

/** Units whose default is a word to be taken as it stands, not a formula (amendment A46). */
const WORD_UNITS = new Set(['word', 'text', 'light, ordinary or heavy']);

export type WhyUnknown = AssumedInput['because'];

/**
 * The inputs while answers are read: what was given, what is not known and why. A value is worked out
 * when it is asked for, because a default may be a formula over inputs that are read later.
 */
export class InputDesk {
  private readonly definitions: ReadonlyMap<string, InputDefinition>;
  private readonly given = new Map<string, InputValue>();
  private readonly unknown = new Map<string, WhyUnknown>();

  /** @param overrides inputs of the document: they win over every answer (amendment A45) */
  constructor(private readonly content: Content, private readonly overrides: Readonly<Record<string, InputValue>>) {
    this.definitions = new Map(content.inputs.map((input) => [input.id, input]));
  }

  set(id: string, value: InputValue): void { this.given.set(id, value); }
  /** Whether somebody has said something of it already, be it that they are not sure. */
  isSettled(id: string): boolean { return this.given.has(id) || this.unknown.get(id) === 'not sure'; }
  setUnknown(id: string, why: WhyUnknown): void { this.unknown.set(id, why); }

  /** @throws when there is no such input */
  value(id: string): InputValue {
    const override = Object.hasOwn(this.overrides, id) ? this.overrides[id] : undefined;
    if (override !== undefined) return override;
    const given = this.given.get(id);
    if (given !== undefined) return given;
    const definition = this.definitions.get(id);
    if (definition === undefined) throw new Error(`no input ${id}`);
    if (this.unknown.has(id) && definition.whenNotSure !== undefined) return definition.whenNotSure;
    return this.fallback(definition);
  }

  has(id: string): boolean { return this.definitions.has(id); }

  all(): ReadonlyMap<string, InputValue> {
    return new Map(this.content.inputs.map((input) => [input.id, this.value(input.id)]));
  }

  /**
   * Every input that stands on an assumption, in the order of the content. A text that was not given is
   * missing, not assumed: nothing is put in its place, and a stop condition says so.
   */
  assumed(): readonly AssumedInput[] {
    return this.content.inputs.flatMap((input) => {
      const because = this.unknown.get(input.id);
      if (because === undefined || this.given.has(input.id) || input.unit === 'text' || Object.hasOwn(this.overrides, input.id)) return [];
      return [{ input: input.id, title: input.title, value: this.value(input.id), unit: input.unit, because }];
    });
  }

  private fallback(definition: InputDefinition): InputValue {
    if (typeof definition.default === 'number' || WORD_UNITS.has(definition.unit)) return definition.default;
    return evaluateFormula(definition.default, (name) => {
      const value = this.value(name);
      if (typeof value !== 'number') throw new Error(`input ${name} is not a number`);
      return value;
    });
  }
}
