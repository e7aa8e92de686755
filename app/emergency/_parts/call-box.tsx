import { dialAddress } from '@/lib/wording/telephone';

/** A number to be called, in digits that can be read across a yard; a link where the digits are all there is. */
export function CallBox({ verb, number }: { readonly verb: string; readonly number: string }) {
  const address = dialAddress(number);
  const words = <><span>{verb}</span> <span className="dial">{number}</span></>;
  return address === null ? <p className="call">{words}</p> : <a className="call" href={address}>{words}</a>;
}
