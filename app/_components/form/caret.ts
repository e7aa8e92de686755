/** Which element of a form has the focus, and what is selected in it. */
export interface CaretPlace { readonly at: number; readonly name: string; readonly selection: readonly [number, number] | null }

/** Returns where the person is in a form, or null when they are elsewhere. */
export function caretIn(form: HTMLFormElement): CaretPlace | null {
  const at = [...form.elements].findIndex((element) => element === document.activeElement);
  const element = form.elements[at];
  return element === undefined ? null : { at, name: nameOf(element), selection: selectionOf(element) };
}

/** Puts the person back there, unless another element stands there now. */
export function putCaret(form: HTMLFormElement, { at, name, selection }: CaretPlace): void {
  const element = form.elements[at];
  if (!(element instanceof HTMLElement) || nameOf(element) !== name) return;
  element.focus({ preventScroll: true });
  if (selection !== null && hasSelection(element)) element.setSelectionRange(...selection);
}

function nameOf(element: Element): string {
  return `${element.tagName} ${element.getAttribute('name') ?? ''}`;
}

function selectionOf(element: Element): readonly [number, number] | null {
  if (!hasSelection(element)) return null;
  const { selectionStart, selectionEnd } = element;
  return selectionStart === null || selectionEnd === null ? null : [selectionStart, selectionEnd];
}

/** Numbers, dates and ticks have none, and say so by an error when one is set. */
function hasSelection(element: Element): element is HTMLInputElement | HTMLTextAreaElement {
  return element instanceof HTMLTextAreaElement || (element instanceof HTMLInputElement && ['text', 'search', 'tel', 'url', 'password'].includes(element.type));
}
