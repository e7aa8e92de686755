import { isDigit, isRegular, isWhite, latin1 } from './characters';
import { expectOfFile } from './pdf-fault';

/** A place in a file that moves forward as the file is read, never past `end`. */
export class Cursor {
  constructor(readonly bytes: Uint8Array, public position: number, readonly end: number = bytes.length) {
    expectOfFile(position >= 0 && position <= end && end <= bytes.length, 'a place outside of the file');
  }

  /** The byte `ahead` of the place, or undefined past the end. */
  peek(ahead = 0): number | undefined {
    const at = this.position + ahead;
    return at < this.end ? this.bytes[at] : undefined;
  }

  /** Moves over white space and comments. */
  skipWhite(): void {
    for (;;) {
      while (isWhite(this.peek())) this.position += 1;
      if (this.peek() !== PERCENT) return;
      while (this.position < this.end && this.peek() !== LINE_FEED && this.peek() !== RETURN) this.position += 1;
    }
  }

  /** Whether these characters stand here. */
  isAt(text: string): boolean {
    for (let index = 0; index < text.length; index += 1) if (this.peek(index) !== text.charCodeAt(index)) return false;
    return true;
  }

  /** Moves over these characters, which must stand here. */
  take(text: string): void {
    expectOfFile(this.isAt(text), `no "${text}" at ${this.position}`);
    this.position += text.length;
  }

  /** Moves over a keyword or number and returns it. */
  word(longest = 32): string {
    const from = this.position;
    while (isRegular(this.peek()) && this.position - from <= longest) this.position += 1;
    const length = this.position - from;
    expectOfFile(length > 0 && length <= longest, `no word at ${from}`);
    return latin1(this.bytes.subarray(from, this.position));
  }

  /** Moves over a whole number without a sign, as stands in offsets and lengths. */
  wholeNumber(): number {
    const from = this.position;
    while (isDigit(this.peek()) && this.position - from <= 10) this.position += 1;
    const length = this.position - from;
    expectOfFile(length > 0 && length <= 10, `no whole number at ${from}`);
    return Number(latin1(this.bytes.subarray(from, this.position)));
  }

  /** Moves over one end of line: LF, CR or CR LF; whether there was one. */
  endOfLine(): boolean {
    const length = this.isAt('\r\n') ? 2 : this.peek() === LINE_FEED || this.peek() === RETURN ? 1 : 0;
    this.position += length;
    return length > 0;
  }
}

const PERCENT = 0x25;
const LINE_FEED = 0x0a;
const RETURN = 0x0d;
