import 'server-only';
import { parseSettings, type Settings } from './settings';

/** The only place that reads `process.env`; a wrong setting ends the program at its start, not in the middle of a form. */
function readEnvironment(): Settings {
  const result = parseSettings(process.env);
  if (!result.ok) throw new Error(`Wrong settings in the environment. ${result.reasons.join('. ')}`);
  return result.settings;
}

export const env: Settings = readEnvironment();
