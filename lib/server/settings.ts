import { z } from 'zod';

const SettingsSchema = z.object({
  NODE_ENV: z.enum(['development', 'production', 'test']).default('development'),
  DATABASE_URL: z
    .string()
    .regex(/^(file:.|postgres(ql)?:\/\/.)/, 'must begin with file: or postgresql://')
    .default('file:./data/sandbucket.db'),
});

/** What the program is told from outside. */
export interface Settings {
  isDevelopment: boolean;
  databaseUrl: string;
}

export type SettingsResult = { ok: true; settings: Settings } | { ok: false; reasons: string[] };

/**
 * Reads the settings out of environment variables. An empty variable counts as absent, as shells leave it that way.
 * @returns the settings, or one sentence per variable that is wrong; values are not repeated, they may hold passwords
 */
export function parseSettings(environment: Readonly<Record<string, string | undefined>>): SettingsResult {
  const given = Object.fromEntries(Object.entries(environment).filter(([, value]) => value !== ''));
  const parsed = SettingsSchema.safeParse(given);
  if (!parsed.success) {
    return { ok: false, reasons: parsed.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`) };
  }
  return { ok: true, settings: { isDevelopment: parsed.data.NODE_ENV === 'development', databaseUrl: parsed.data.DATABASE_URL } };
}
