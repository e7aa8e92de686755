import { type DocumentFault, faultAt } from './fault';
import type { Path } from './json-path';
import { JsonSyntaxError, stringEnd, wordAt } from './json-tokens';

export { JsonSyntaxError } from './json-tokens';

const DEEPEST = 32;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const NOT_IN_JSON = ['NaN', 'Infinity', '-Infinity'];
const ANY_VALUE = 'text in double quotes, a number, true, false, null, { or [';

/** Reads one document. What can be got over is noted in `faults`; what cannot throws a JsonSyntaxError. */
export class JsonReader {
  readonly faults: DocumentFault[] = [];
  private at = 0;

  constructor(private readonly text: string) {}

  whole(): unknown {
    const value = this.value([]);
    this.skipBlanks();
    if (this.at < this.text.length) this.stop('there is something after the end of the document', 'nothing after the last bracket');
    return value;
  }

  private value(path: Path): unknown {
    this.skipBlanks();
    if (path.length > DEEPEST) this.stop('lists and objects lie too deep inside each other', `at most ${DEEPEST} deep`);
    const first = this.text[this.at];
    if (first === '{') return this.object(path);
    if (first === '[') return this.list(path);
    if (first === '"') return this.string();
    const word = wordAt(this.text, this.at);
    return word === '' ? this.number(path) : this.word(word, path);
  }

  private object(path: Path): Record<string, unknown> {
    const members: Record<string, unknown> = {};
    this.at += 1;
    if (this.closes('}')) return members;
    for (;;) {
      this.skipBlanks();
      if (this.text[this.at] !== '"') this.stop(this.seen(), 'a name in double quotes; no comma after the last entry');
      const name = this.string();
      this.take(':', `a colon after the name ${JSON.stringify(name)}`);
      this.keep(members, name, this.value([...path, name]), path);
      if (this.closes('}')) return members;
      this.take(',', 'a comma between two entries, or } at the end');
    }
  }

  /** `__proto__` would not become an entry but change what the object is; the first of two equal names stays. */
  private keep(members: Record<string, unknown>, name: string, value: unknown, path: Path): void {
    if (name === '__proto__') this.faults.push(faultAt([...path, name], 'is a name that no document may use', 'another name'));
    else if (Object.hasOwn(members, name)) this.faults.push(faultAt([...path, name], 'is given more than once', 'each name once'));
    else members[name] = value;
  }

  private list(path: Path): unknown[] {
    const items: unknown[] = [];
    this.at += 1;
    if (this.closes(']')) return items;
    for (;;) {
      items.push(this.value([...path, items.length]));
      if (this.closes(']')) return items;
      this.take(',', 'a comma between two entries, or ] at the end');
    }
  }

  private string(): string {
    const end = stringEnd(this.text, this.at);
    const value: unknown = JSON.parse(this.text.slice(this.at, end));
    this.at = end;
    return String(value);
  }

  /** A word of JSON. Words for no number are got over. */
  private word(word: string, path: Path): unknown {
    this.at += word.length;
    if (word === 'true' || word === 'false') return word === 'true';
    if (word === 'null') return null;
    if (NOT_IN_JSON.includes(word)) return this.noNumber(path, `is ${word}, which JSON does not have`);
    this.at -= word.length;
    return this.stop(`${JSON.stringify(word)} cannot stand here`, ANY_VALUE);
  }

  private number(path: Path): number {
    NUMBER.lastIndex = this.at;
    const digits = NUMBER.exec(this.text)?.[0];
    if (digits === undefined) return this.stop(this.seen(), ANY_VALUE);
    this.at += digits.length;
    if (/[\w.+]/.test(this.text[this.at] ?? '')) this.stop('a number goes on where it should end', 'a number such as 12 or 0.5, without a leading zero');
    const value = Number(digits);
    return Number.isFinite(value) ? value : this.noNumber(path, 'is a number too large to be held');
  }

  private noNumber(path: Path, problem: string): number {
    this.faults.push(faultAt(path, problem, 'a finite number, such as 0.25'));
    return Number.NaN;
  }

  private seen(): string {
    const character = this.text[this.at];
    return character === undefined ? 'the document ends too early' : `${JSON.stringify(character)} cannot stand here`;
  }

  private closes(bracket: string): boolean {
    this.skipBlanks();
    if (this.text[this.at] !== bracket) return false;
    this.at += 1;
    return true;
  }

  private take(mark: string, expected: string): void {
    this.skipBlanks();
    if (this.text[this.at] !== mark) this.stop(this.seen(), expected);
    this.at += 1;
  }

  private skipBlanks(): void {
    while (' \t\n\r'.includes(this.text[this.at] ?? '.')) this.at += 1;
  }

  private stop(problem: string, expected: string): never {
    throw new JsonSyntaxError(problem, expected, this.at);
  }
}
