import type { CompareOp, Condition, ControlState, DerivedName, InputValue } from '@/lib/content/model';

/** What a condition may look at. Each function throws when the id is unknown: that is a fault of the content. */
export interface ConditionContext {
  readonly state: (control: string) => ControlState;
  readonly input: (id: string) => InputValue;
  readonly derived: (name: DerivedName) => number;
}

/**
 * Whether a condition of the content holds. Conditions are data; nothing is evaluated as code.
 * @returns true or false; an empty `all` holds, an empty `any` does not
 */
export function evaluateCondition(condition: Condition, context: ConditionContext): boolean {
  if ('all' in condition) return condition.all.every((part) => evaluateCondition(part, context));
  if ('any' in condition) return condition.any.some((part) => evaluateCondition(part, context));
  if ('control' in condition) return condition.in.includes(context.state(condition.control));
  if ('derived' in condition) return compare(context.derived(condition.derived), condition.op, boundOf(condition, context));
  const value = context.input(condition.input);
  return compare(condition.measure === 'digits' ? digitsIn(value) : value, condition.op, condition.value);
}

/** How many digits a text holds: a telephone number needs some, "on the card by the door" has none. */
const digitsIn = (value: InputValue): number => String(value).replace(/\D/g, '').length;

function boundOf(condition: { readonly value?: number; readonly input?: string }, context: ConditionContext): InputValue {
  if (condition.input !== undefined) return context.input(condition.input);
  if (condition.value !== undefined) return condition.value;
  throw new Error('a condition on a derived value needs a value or an input to compare with');
}

function compare(left: InputValue, op: CompareOp, right: InputValue): boolean {
  if (op === '=') return left === right;
  if (op === '!=') return left !== right;
  if (typeof left !== 'number' || typeof right !== 'number') return false;
  if (op === '<') return left < right;
  if (op === '<=') return left <= right;
  if (op === '>') return left > right;
  return left >= right;
}
