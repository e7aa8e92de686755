import type { ReactNode } from 'react';
import { KeepEmergency } from '@/app/_components/keep-emergency';
import { Brand } from '@/app/_components/ui/brand';
import { Icon } from '@/app/_components/ui/icon';
import { ROLE_NAMES, type Role } from '@/lib/access/roles';
import { signOutHere } from '../account/actions';
import { EmergencyKey } from './emergency-key';
import { BarPlaces, MorePlaces } from './place-lists';

interface SchoolFrameProps {
  readonly name: string;
  readonly role: Role;
  readonly school: string;
  readonly children: ReactNode;
}

/** What stands around every page of somebody who is signed in. The page brings its own `Sheet`. */
export function SchoolFrame({ children, ...who }: SchoolFrameProps) {
  return (
    <div className="frame school">
      <header className="top">
        <Brand home="/today" />
        <details className="more-menu">
          <summary><Icon name="more" />More</summary>
          <MoreList {...who} label="More places" />
        </details>
      </header>
      <div className="side"><div className="side-in">
        <BarPlaces role={who.role} />
        <MoreList {...who} label="More" />
      </div></div>
      {children}
      <EmergencyKey />
      <KeepEmergency anew />
    </div>
  );
}

function MoreList({ name, role, school, label }: Omit<SchoolFrameProps, 'children'> & { readonly label: string }) {
  return (
    <nav className="more" aria-label={label}>
      <MorePlaces role={role} />
      <div className="who">
        <p>{name}, {ROLE_NAMES[role]}<br />{school}</p>
        <form action={signOutHere}><button type="submit" className="as-link">Sign out</button></form>
      </div>
    </nav>
  );
}
