import * as asn1js from 'asn1js';

/** The bytes of a value in DER. */
export function derOf(value: asn1js.AsnType): Uint8Array {
  return new Uint8Array(value.toBER(false));
}

/** The value at the start of some bytes, and how long it is; undefined where there is none. */
export function readDer(bytes: Uint8Array): { readonly value: asn1js.AsnType; readonly length: number } | undefined {
  const { offset, result } = asn1js.fromBER(Uint8Array.from(bytes));
  return offset < 0 || result.error !== '' ? undefined : { value: result, length: offset };
}

/** The values inside a sequence, a set or a tagged value. */
export function partsOf(value: asn1js.AsnType | undefined): readonly asn1js.AsnType[] {
  return value instanceof asn1js.Constructed ? value.valueBlock.value : [];
}

/** The dotted form of an object identifier; undefined for anything else. */
export function oidOf(value: asn1js.AsnType | undefined): string | undefined {
  return value instanceof asn1js.ObjectIdentifier ? value.getValue() : undefined;
}

/** The content of an octet string in one piece; undefined for anything else. */
export function octetsOf(value: asn1js.AsnType | undefined): Uint8Array | undefined {
  return value instanceof asn1js.OctetString && !value.idBlock.isConstructed ? new Uint8Array(value.getValue()) : undefined;
}

/** Whether a value is the context's own [n]. */
export function isTagged(value: asn1js.AsnType | undefined, tag: number): value is asn1js.AsnType {
  return value !== undefined && value.idBlock.tagClass === 3 && value.idBlock.tagNumber === tag;
}

export const sequence = (...value: asn1js.AsnType[]) => new asn1js.Sequence({ value });
export const setOf = (...value: asn1js.AsnType[]) => new asn1js.Set({ value });
export const oid = (value: string) => new asn1js.ObjectIdentifier({ value });
export const octets = (bytes: Uint8Array) => new asn1js.OctetString({ valueHex: Uint8Array.from(bytes) });
export const integer = (value: number) => new asn1js.Integer({ value });
export const tagged = (tagNumber: number, ...value: asn1js.AsnType[]) => new asn1js.Constructed({ idBlock: { tagClass: 3, tagNumber }, value });

/** A value that is there in DER already. */
export function embedded(der: Uint8Array): asn1js.AsnType {
  const read = readDer(der);
  if (read === undefined || read.length !== der.length) throw new Error('not one value in DER');
  return read.value;
}
