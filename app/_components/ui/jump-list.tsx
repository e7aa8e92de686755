export interface Jump { readonly id: string; readonly text: string }

/** Links to the parts of a page, instead of tabs: everything stays on the page, prints and can be searched. */
export function JumpList({ jumps, label = 'On this page' }: { readonly jumps: readonly Jump[]; readonly label?: string }) {
  return (
    <nav aria-label={label} className="jumpnav">
      <ul className="jump">
        {jumps.map((jump) => <li key={jump.id}><a href={`#${jump.id}`}>{jump.text}</a></li>)}
      </ul>
    </nav>
  );
}
