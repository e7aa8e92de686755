/** Every drawing of the sprite in `sprite.tsx`, by the end of its symbol's id. */
export type IconName = 'bang' | 'busy' | 'check' | 'cross' | 'down' | 'file' | 'left' | 'minus' | 'plus' | 'right' | 'undo';

/** A small drawing beside a word; never alone, so it is hidden from assistive technology. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="ic" aria-hidden="true" focusable="false">
      <use href={`#i-${name}`} />
    </svg>
  );
}
