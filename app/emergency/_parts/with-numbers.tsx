import { Fragment } from 'react';

/** A sentence with its telephone numbers in a type whose zeros cannot be taken for another sign. */
export function WithNumbers({ text, numbers }: { readonly text: string; readonly numbers: readonly string[] }) {
  const number = numbers.find((one) => text.includes(one));
  if (number === undefined) return text;
  return text.split(number).map((part, index) => (
    <Fragment key={index}>{index === 0 ? null : <span className="dial">{number}</span>}{part}</Fragment>
  ));
}
