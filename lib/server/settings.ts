import { z } from 'zod';

const SettingsSchema = z.object({
  NODE_ENV: z.enum(['development', 'production', 'test']).default('development'),
  DATABASE_URL: z
    .string()
    .regex(/^(file:.|postgres(ql)?:\/\/.)/, 'must begin with file: or postgresql://')
    .default('file:./data/sandbucket.db'),
  BETTER_AUTH_SECRET: z.string().min(32, 'must be at least 32 characters long').optional(),
  BETTER_AUTH_URL: z.url({ protocol: /^https?$/, error: 'must begin with http:// or https://' }).optional(),
  SANDBUCKET_SETUP_CODE: z.string().min(12, 'must be at least 12 characters long').optional(),
});

/** What the program is told from outside. */
export interface Settings {
  isDevelopment: boolean;
  databaseUrl: string;
  /** what every key of this installation is made from; absent while the program is built, never while it serves */
  secret: string | undefined;
  /** where people reach the program; with https its cookies are sent over https only */
  publicUrl: string | undefined;
  /** whoever makes the first account must know it; set when others than this machine can reach the program */
  setupCode: string | undefined;
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
  const { data } = parsed;
  return {
    ok: true,
    settings: {
      isDevelopment: data.NODE_ENV === 'development',
      databaseUrl: data.DATABASE_URL,
      secret: data.BETTER_AUTH_SECRET,
      publicUrl: data.BETTER_AUTH_URL,
      setupCode: data.SANDBUCKET_SETUP_CODE,
    },
  };
}
