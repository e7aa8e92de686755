import { latin1, latin1Bytes } from './characters';
import type { PdfDict, PdfString, PdfValue } from './objects';

/** A value as it stands in a file. Dictionaries keep the order of their entries, so the same value gives the same bytes. */
export function writeValue(value: PdfValue): Uint8Array {
  if (typeof value === 'object' && value !== null && value.kind === 'stream') {
    return joined([latin1Bytes(`${written(value.dict)}\nstream\n`), value.data, latin1Bytes('\nendstream')]);
  }
  return latin1Bytes(written(value));
}

/** Pieces one after another. */
export function joined(pieces: readonly Uint8Array[]): Uint8Array {
  return new Uint8Array(Buffer.concat(pieces));
}

function written(value: PdfValue): string {
  if (typeof value === 'number') return writtenNumber(value);
  if (value === null || typeof value === 'boolean') return String(value);
  switch (value.kind) {
    case 'name': return writtenName(value.name);
    case 'ref': return `${value.number} ${value.generation} R`;
    case 'string': return writtenString(value);
    case 'array': return `[${value.items.map(written).join(' ')}]`;
    case 'dict': return writtenDict(value);
    case 'stream': throw new Error('a stream stands in an object of its own');
  }
}

/** Without an exponent, which the format does not have. */
function writtenNumber(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`${value} cannot be written`);
  return Number.isInteger(value) ? value.toFixed(0) : value.toFixed(5).replace(/0+$/, '');
}

function writtenName(name: string): string {
  const escaped = name.replaceAll(/[^!-~]|[()<>[\]{}/%#]/g, (character) => `#${character.charCodeAt(0).toString(16).padStart(2, '0')}`);
  return `/${escaped}`;
}

function writtenString({ bytes, form }: PdfString): string {
  if (form === 'hex') return `<${Buffer.from(bytes).toString('hex')}>`;
  const escaped = latin1(bytes).replaceAll(/[()\\]/g, String.raw`\$&`).replaceAll('\r', String.raw`\r`).replaceAll('\n', String.raw`\n`);
  return `(${escaped})`;
}

function writtenDict({ entries }: PdfDict): string {
  return `<<${[...entries].map(([name, value]) => `${writtenName(name)} ${written(value)}`).join(' ')}>>`;
}
