/**
 * xoshiro128**, a small fast generator with 128 bits of state: Blackman and Vigna, "Scrambled linear
 * pseudorandom number generators", ACM TOMS 47(4), 2021. Seeded by splitmix32, so that neighbouring
 * seeds give unrelated streams. Same seed, same stream, on every machine.
 */
export class RandomStream {
  private a: number;
  private b: number;
  private c: number;
  private d: number;

  /**
   * @param seed whole number, 0 to 4,294,967,295
   * @param lane which of several independent streams of that seed
   */
  constructor(seed: number, lane = 0) {
    let state = (seed ^ Math.imul(lane + 1, 0x9e3779b9)) >>> 0;
    const next = (): number => {
      state = (state + 0x9e3779b9) >>> 0;
      let mixed = state ^ (state >>> 16);
      mixed = Math.imul(mixed, 0x21f0aaad);
      mixed ^= mixed >>> 15;
      mixed = Math.imul(mixed, 0x735a2d97);
      return (mixed ^ (mixed >>> 15)) >>> 0;
    };
    this.a = next();
    this.b = next();
    this.c = next();
    // the all-zero state is the one from which the generator never leaves
    this.d = next() | 1;
  }

  /** Starts from a given state, to compare with published output; not all four may be zero. */
  static fromState(a: number, b: number, c: number, d: number): RandomStream {
    const stream = new RandomStream(0);
    stream.a = a;
    stream.b = b;
    stream.c = c;
    stream.d = d;
    return stream;
  }

  /** @returns a whole number, 0 to 4,294,967,295, each equally likely */
  nextUint32(): number {
    const scrambled = Math.imul(this.b, 5);
    const result = Math.imul((scrambled << 7) | (scrambled >>> 25), 9) >>> 0;
    const shifted = this.b << 9;
    this.c ^= this.a;
    this.d ^= this.b;
    this.b ^= this.c;
    this.a ^= this.d;
    this.c ^= shifted;
    this.d = (this.d << 11) | (this.d >>> 21);
    return result;
  }

  /** @returns a number strictly between 0 and 1, in steps of 2⁻³² */
  nextOpen(): number {
    return (this.nextUint32() + 0.5) * 2.3283064365386963e-10;
  }
}
