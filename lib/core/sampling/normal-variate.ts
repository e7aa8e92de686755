import type { RandomStream } from './random-stream';

/**
 * Ziggurat of 128 layers: Marsaglia and Tsang, "The ziggurat method for generating random variables",
 * J. Stat. Software 5(8), 2000, in the form of Doornik, "An improved ziggurat method to generate normal
 * random samples", 2005. A draw needs more than a hundred normals, and this takes a third of the time of
 * inversion. Right edge and layer area from memory; a test holds the layers to close at zero and the
 * variates to the normal distribution.
 */
const LAYERS = 128;
const RIGHT_EDGE = 3.442619855899;
export const LAYER_AREA = 9.91256303526217e-3;

const density = (x: number): number => Math.exp(-0.5 * x * x);

/** Right edges of the layers, widest first; the last one is 0. */
export const EDGES: Float64Array = (() => {
  const edges = new Float64Array(LAYERS + 1);
  edges[0] = LAYER_AREA / density(RIGHT_EDGE);
  edges[1] = RIGHT_EDGE;
  for (let layer = 2; layer < LAYERS; layer += 1) {
    const before = edges[layer - 1] as number;
    edges[layer] = Math.sqrt(-2 * Math.log(LAYER_AREA / before + density(before)));
  }
  return edges;
})();

/** Share of a layer that lies wholly under the curve. */
const INSIDE = Float64Array.from({ length: LAYERS }, (_, layer) => (EDGES[layer + 1] as number) / (EDGES[layer] as number));
/** 25 bits of the uniform, as a number between −1 and 1. */
const STEP = 2 ** -24;

/** @returns a standard normal variate */
export function normalVariate(stream: RandomStream): number {
  for (;;) {
    const bits = stream.nextUint32();
    const layer = bits & 127;
    const u = ((bits >>> 7) + 0.5) * STEP - 1;
    if (u < (INSIDE[layer] as number) && u > -(INSIDE[layer] as number)) return u * (EDGES[layer] as number);
    if (layer === 0) return tail(stream, u < 0);
    const x = u * (EDGES[layer] as number);
    const outer = Math.exp(-0.5 * ((EDGES[layer] as number) * (EDGES[layer] as number) - x * x));
    const inner = Math.exp(-0.5 * ((EDGES[layer + 1] as number) * (EDGES[layer + 1] as number) - x * x));
    if (inner + stream.nextOpen() * (outer - inner) < 1) return x;
  }
}

/** Beyond the right edge: Marsaglia, "Generating a variable from the tail of the normal distribution", Technometrics 6(1), 1964. */
function tail(stream: RandomStream, negative: boolean): number {
  for (;;) {
    const x = Math.log(stream.nextOpen()) / RIGHT_EDGE;
    const y = Math.log(stream.nextOpen());
    if (-2 * y >= x * x) return negative ? x - RIGHT_EDGE : RIGHT_EDGE - x;
  }
}
