import Link from 'next/link';
import { type ComponentProps, type ReactNode, useId } from 'react';
import { Icon } from './icon';

/** main: one a screen; now: only where a person must act at once; plain: underlined, for the lesser way out. */
export type ButtonKind = 'main' | 'outline' | 'now' | 'danger' | 'plain';

interface Look {
  readonly kind?: ButtonKind;
  readonly size?: 'normal' | 'small';
  readonly children: ReactNode;
}

interface ButtonProps extends Look, Omit<ComponentProps<'button'>, 'disabled' | 'children' | 'className'> {
  readonly busy?: boolean;
  /** why it cannot be pressed now; shown beside the button, which stays in the tab order */
  readonly unavailable?: string;
}

export function Button({ kind = 'outline', size = 'normal', busy = false, unavailable, children, onClick, type = 'button', ...rest }: ButtonProps) {
  const reasonId = useId();
  const off = unavailable !== undefined || busy;
  return (
    <>
      <button
        {...rest}
        type={off && type === 'submit' ? 'button' : type}
        className={look(kind, size) + (busy ? ' busy' : '')}
        aria-disabled={off || undefined}
        aria-describedby={unavailable === undefined ? rest['aria-describedby'] : reasonId}
        onClick={off ? undefined : onClick}
      >
        {busy ? <Icon name="busy" /> : null}
        {children}
      </button>
      {unavailable === undefined ? null : <span id={reasonId} className="small muted reason">{unavailable}</span>}
    </>
  );
}

interface ButtonLinkProps extends Look {
  readonly href: string;
  /** file name, when the link saves a file */
  readonly download?: string;
}

/** Looks like a button, goes somewhere: a link for the browser and for assistive technology. */
export function ButtonLink({ href, kind = 'outline', size = 'normal', download, children }: ButtonLinkProps) {
  const props = { href, className: look(kind, size), children };
  return href.startsWith('/') && download === undefined ? <Link {...props} prefetch={false} /> : <a {...props} download={download} />;
}

function look(kind: ButtonKind, size: 'normal' | 'small'): string {
  const kindClass = { main: 'btn main', outline: 'btn', now: 'btn now', danger: 'btn red', plain: 'btn plain' }[kind];
  return size === 'small' ? `${kindClass} small` : kindClass;
}
