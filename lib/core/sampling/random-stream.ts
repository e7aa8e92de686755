/**
 * xoshiro128**, a small fast generator with 128 bits of state: Blackman and Vigna, "Scrambled linear
 * pseudorandom number generators", ACM TOMS 47(4), 2021. Seeded by a splitmix step, so that
 * neighbouring seeds give unrelated streams. Same seed, same stream, on every machine.
 *
 * The state lies in an Int32Array: kept in fields, numbers above 2³⁰ would be boxed anew at each step,
 * which costs more than the generator itself.
 */
export class RandomStream {
  private readonly state: Int32Array;

  private constructor(state: Int32Array) { this.state = state; }

  /**
   * @param seed whole number, 0 to 4,294,967,295
   * @param lane which of several unrelated streams of that seed, 0 or more
   */
  static of(seed: number, lane: number): RandomStream {
    let counter = seed ^ Math.imul(lane + 1, 0x9e3779b9);
    const state = Int32Array.from({ length: 4 }, () => {
      counter = (counter + 0x9e3779b9) | 0;
      let mixed = Math.imul(counter ^ (counter >>> 16), 0x21f0aaad);
      mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
      return mixed ^ (mixed >>> 15);
    });
    // from the all-zero state the generator never leaves
    state[3] = (state[3] ?? 0) | 1;
    return new RandomStream(state);
  }

  /** Starts from a given state, to compare with published output; not all four may be zero. */
  static fromState(state: readonly [number, number, number, number]): RandomStream {
    return new RandomStream(Int32Array.from(state));
  }

  /** @returns a whole number, 0 to 4,294,967,295, each equally likely */
  nextUint32(): number {
    const state = this.state;
    const b = state[1] as number;
    const scrambled = Math.imul(b, 5);
    const result = Math.imul((scrambled << 7) | (scrambled >>> 25), 9) >>> 0;
    const c = (state[2] as number) ^ (state[0] as number);
    const d = (state[3] as number) ^ b;
    state[1] = b ^ c;
    state[0] = (state[0] as number) ^ d;
    state[2] = c ^ (b << 9);
    state[3] = (d << 11) | (d >>> 21);
    return result;
  }

  /** @returns a number strictly between 0 and 1, in steps of 2⁻³² */
  nextOpen(): number {
    return (this.nextUint32() + 0.5) * 2.3283064365386963e-10;
  }
}
