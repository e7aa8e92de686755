'use client';

import { Component, type ReactNode, type RefObject } from 'react';
import { type CaretPlace, caretIn, putCaret } from './caret';
import { changedSince, type HeldFields, heldFields, putBack, withFiles } from './typed-since';

interface KeepTypedSinceProps {
  readonly form: RefObject<HTMLFormElement | null>;
  /** what stood in the form when it was sent */
  readonly sent: RefObject<HeldFields | null>;
  /** counts the answers: with each one the fields are drawn anew */
  readonly attempt: number;
  readonly cameBack: boolean;
  readonly children: ReactNode;
}

interface Kept { readonly fields: HeldFields; readonly caret: CaretPlace | null }

/**
 * Keeps what was typed while the form was on its way, and the files of a form that came back, when the answer draws the
 * fields anew. A class, since no hook reads the page before React changes it.
 */
export class KeepTypedSince extends Component<KeepTypedSinceProps> {
  override getSnapshotBeforeUpdate(before: KeepTypedSinceProps): Kept | null {
    const [form, sent] = [this.props.form.current, this.props.sent.current];
    if (before.attempt === this.props.attempt || form === null || sent === null) return null;
    const files = this.props.cameBack ? withFiles(sent) : new Map<never, never>();
    return { fields: new Map([...files, ...changedSince(sent, heldFields(form))]), caret: caretIn(form) };
  }

  override componentDidUpdate(_before: KeepTypedSinceProps, _state: unknown, kept: Kept | null): void {
    const form = this.props.form.current;
    if (kept === null || form === null) return;
    putBack(form, kept.fields);
    if (kept.caret !== null) putCaret(form, kept.caret);
  }

  override render(): ReactNode {
    return this.props.children;
  }
}
