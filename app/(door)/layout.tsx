import Link from 'next/link';
import type { ReactNode } from 'react';
import { Brand } from '../_components/ui/brand';
import { Icon } from '../_components/ui/icon';
import { QuietLine } from '../_components/ui/quiet-line';

/** Pages of people who are not signed in yet. In an emergency nobody has to sign in first. */
export default function DoorLayout({ children }: { readonly children: ReactNode }) {
  return (
    <div className="door">
      <header className="door-side">
        <Brand />
        <Link className="btn red door-alarm" href="/emergency" prefetch={false}><Icon name="bang" />Emergency / incident</Link>
        <p className="claim">Show that the room, the charging spot and the packs are under control. And see when they no longer are.</p>
        <svg className="heap" viewBox="0 0 400 170" preserveAspectRatio="none" aria-hidden="true" focusable="false"><path d="M0 170V128C60 120 92 40 170 34C240 28 262 96 400 113V170z" fill="url(#sand)" /></svg>
      </header>
      <div className="door-main">
        <main id="main" tabIndex={-1}>{children}</main>
        <QuietLine />
      </div>
    </div>
  );
}
