import type { Content } from '@/lib/content/model';

interface Source {
  readonly kind: 'control' | 'stop' | 'own';
  readonly id: string;
  /** what stands in the field before anything is typed */
  readonly title: string;
  readonly about: string | undefined;
  readonly good: string;
}

const OWN: Source = { kind: 'own', id: '', title: '', about: undefined, good: '' };
const LONGEST_TITLE = 200;

/** What an action is made out of, by what its address names; what the edition does not have is one's own. */
export function madeOutOf({ controls, stops }: Content, asked: { readonly control?: string | string[]; readonly stop?: string | string[] }): Source {
  const control = controls.find(({ id }) => id === asked.control);
  if (control !== undefined) return { kind: 'control', id: control.id, title: control.title.slice(0, LONGEST_TITLE), about: undefined, good: control.goodLooksLike };
  const stop = stops.find(({ id }) => id === asked.stop);
  if (stop === undefined) return OWN;
  return { kind: 'stop', id: stop.id, title: stop.settles.slice(0, LONGEST_TITLE), about: `To settle: ${stop.title}`, good: '' };
}
