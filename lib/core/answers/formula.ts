/** The value of a name in a formula; throws when the name is unknown. */
export type NameLookup = (name: string) => number;

const TOKEN = /\s*(?:(\d+(?:\.\d+)?)|([A-Za-z]\w*)|([-+*/(),]))/y;
const FUNCTIONS: Readonly<Record<string, (values: readonly number[]) => number>> = {
  min: (values) => Math.min(...values),
  max: (values) => Math.max(...values),
  ceil: (values) => Math.ceil(values[0] ?? Number.NaN),
};

/**
 * Value of a formula of the content: + − * / brackets, min, max, ceil, numbers and names. A reader of
 * its own, so that no text is ever run as code.
 * @param formula for example "max(1, packs / 8)"
 * @returns a finite number
 * @throws on a formula that cannot be read or has no finite value: a fault of the content, caught by its checks
 */
export function evaluateFormula(formula: string, lookup: NameLookup): number {
  const reader = new FormulaReader(tokensOf(formula), lookup, formula);
  const value = reader.whole();
  if (!Number.isFinite(value)) throw new Error(`formula "${formula}" has no finite value`);
  return value;
}

function tokensOf(formula: string): readonly string[] {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  const text = formula.trimEnd();
  while (TOKEN.lastIndex < text.length) {
    const match = TOKEN.exec(text);
    if (match === null) throw new Error(`formula "${formula}" cannot be read`);
    tokens.push(match[0].trim());
  }
  return tokens;
}

class FormulaReader {
  private at = 0;
  constructor(private readonly tokens: readonly string[], private readonly lookup: NameLookup, private readonly formula: string) {}

  whole(): number {
    const value = this.sum();
    if (this.at < this.tokens.length) throw new Error(`formula "${this.formula}" has something left over`);
    return value;
  }

  private next(): string { return this.tokens[this.at] ?? ''; }
  private take(expected: string): void {
    if (this.next() !== expected) throw new Error(`formula "${this.formula}" wants ${expected}`);
    this.at += 1;
  }

  private sum(): number {
    let value = this.product();
    while (this.next() === '+' || this.next() === '-') {
      const sign = this.next() === '+' ? 1 : -1;
      this.at += 1;
      value += sign * this.product();
    }
    return value;
  }

  private product(): number {
    let value = this.factor();
    while (this.next() === '*' || this.next() === '/') {
      const times = this.next() === '*';
      this.at += 1;
      const right = this.factor();
      value = times ? value * right : value / right;
    }
    return value;
  }

  private factor(): number {
    const token = this.next();
    this.at += 1;
    if (token === '(') { const value = this.sum(); this.take(')'); return value; }
    if (token === '-') return -this.factor();
    if (/^\d/.test(token)) return Number(token);
    const named = Object.hasOwn(FUNCTIONS, token) ? FUNCTIONS[token] : undefined;
    if (named !== undefined) return named(this.argumentList());
    if (/^[A-Za-z]/.test(token)) return this.lookup(token);
    throw new Error(`formula "${this.formula}" cannot be read at "${token}"`);
  }

  private argumentList(): readonly number[] {
    this.take('(');
    const values = [this.sum()];
    while (this.next() === ',') { this.at += 1; values.push(this.sum()); }
    this.take(')');
    return values;
  }
}
