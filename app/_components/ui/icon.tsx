/** Every drawing of the sprite in `sprite.tsx`, by the end of its symbol's id. */
export type IconName = 'assessments' | 'bang' | 'busy' | 'check' | 'cross' | 'down' | 'events' | 'file' | 'incidents' | 'left' | 'minus' | 'more' | 'packs' | 'plus' | 'right' | 'today' | 'undo';

/** A small drawing beside a word; never alone, so it is hidden from assistive technology. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="ic" aria-hidden="true" focusable="false">
      <use href={`#i-${name}`} />
    </svg>
  );
}
