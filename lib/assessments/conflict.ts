import { z } from 'zod';

const OneSideSchema = z.object({ words: z.string(), note: z.string() });

const ConflictShownSchema = z.object({
  field: z.string(),
  question: z.string(),
  byName: z.string(),
  at: z.string(),
  /** the revision of theirs that is shown: to be sent back with a choice */
  revision: z.number(),
  theirs: OneSideSchema,
  mine: OneSideSchema,
});

/** Two answers to one question, in words, side by side. */
export type ConflictShown = z.output<typeof ConflictShownSchema>;

const WithConflictsSchema = z.object({ conflicts: z.array(ConflictShownSchema) });

/** The conflicts that came back with a form; none when it holds none. */
export function conflictsIn(data: unknown): readonly ConflictShown[] {
  const read = WithConflictsSchema.safeParse(data);
  return read.success ? read.data.conflicts : [];
}
