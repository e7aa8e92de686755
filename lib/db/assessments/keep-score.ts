import type { SchoolScope } from '../scope';
import type { Tx } from '../transaction';

/** A result with everything it takes to make it again. */
export interface KeptScore {
  readonly inputJson: string;
  readonly inputHash: string;
  readonly contentVersion: string;
  readonly engineVersion: string;
  readonly seed: number;
  readonly draws: number;
  readonly resultJson: string;
  readonly resultHash: string;
}

/** Keeps a result, unless the very same is kept already. @returns its id */
export async function keepScore(tx: Tx, scope: SchoolScope, at: Date, versionId: string, score: KeptScore): Promise<string> {
  const { seed, ...rest } = score;
  const key = { versionId, inputHash: score.inputHash, engineVersion: score.engineVersion, seed: BigInt(seed), draws: score.draws };
  const known = await tx.score.findUnique({ where: { versionId_inputHash_engineVersion_seed_draws: key }, select: { id: true } });
  if (known !== null) return known.id;
  const made = await tx.score.create({ data: { ...scope, ...rest, versionId, seed: BigInt(seed), createdAt: at }, select: { id: true } });
  return made.id;
}
