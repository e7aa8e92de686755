import type { Schedule } from './details';

const LINE = /^(\d{1,2}[:.]\d{2})(?:\s*[-–]\s*(\d{1,2}[:.]\d{2}))?[\s,:;-]+(\S.*)$/u;
const MOST_LINES = 40;

/** Reads a schedule, a line for each entry: "09:00 Doors open". A line without a time belongs to the one before. */
export function readSchedule(text: string): { readonly ok: true; readonly value: Schedule } | { readonly ok: false; readonly reason: string } {
  const lines = text.split('\n').map((line) => line.trim()).filter((line) => line !== '');
  if (lines.length > MOST_LINES) return { ok: false, reason: `Use at most ${MOST_LINES} lines` };
  const entries: { time: string; what: string }[] = [];
  for (const line of lines) {
    const match = LINE.exec(line);
    const [, from, until, what] = match ?? [];
    const last = entries.at(-1);
    if (from === undefined || what === undefined) {
      if (last === undefined) return { ok: false, reason: `Begin with a time, such as 09:00 Doors open: “${line}”` };
      last.what = `${last.what} ${line}`;
      continue;
    }
    const times = [from, ...(until === undefined ? [] : [until])].map(clock);
    if (times.includes(null)) return { ok: false, reason: `There is no such time: “${line}”` };
    entries.push({ time: times.join(' to '), what });
  }
  return { ok: true, value: entries };
}

/** A schedule as it is typed. */
export function writeSchedule(schedule: Schedule): string {
  return schedule.map(({ time, what }) => `${time.replace(' to ', '-')} ${what}`).join('\n');
}

function clock(text: string): string | null {
  const [hour = '', minute = ''] = text.split(/[:.]/);
  return Number(hour) > 23 || Number(minute) > 59 ? null : `${hour.padStart(2, '0')}:${minute}`;
}
