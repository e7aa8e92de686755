import { DAY_MS } from '@/lib/units/time';


/** Whole days from one calendar day to another, YYYY-MM-DD; negative when the second lies before. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}
