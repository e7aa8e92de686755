import type { GuidanceText } from '@/lib/content/model';
import type { Content } from '@/lib/content/model';

/** The guidance text that says what to do about a stop, where there is one. It is linked, never shown beside it. */
const TEXT_OF: ReadonlyMap<string, string> = new Map([
  ['no-outdoor-spot', 'outdoor-spot'],
  ['damaged-with-sound', 'dispose-damaged'],
  ['swollen-in-use', 'swollen-cool'],
  ['left-alone', 'charging-alone'],
  ['alarm-isolated', 'detector-off'],
  ['damaged-travels', 'travel-road'],
]);

export function guidanceOfStop({ guidance }: Content, stop: string): GuidanceText | undefined {
  return guidance?.texts.find((text) => text.id === TEXT_OF.get(stop));
}
