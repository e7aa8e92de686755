/** Counted in characters as people count them. NIST SP 800-63B asks for at least 8, and 15 where it stands alone. */
export const SHORTEST_PASSWORD = 12;
export const LONGEST_PASSWORD = 128;
/** What may be taken off the ends of a common password before it counts as another one. */
const FEWEST_LEFT = 5;

export interface PasswordCheck {
  readonly password: string;
  /** whether a lower-cased word stands in the list of common passwords */
  readonly isCommon: (word: string) => boolean;
  /** what others know of the person: e-mail, name, school */
  readonly known: readonly string[];
}

/**
 * Returns why a password cannot be taken, in words, or null when it can. Length and a list of common ones, with no
 * rules about signs: NIST SP 800-63B, 3.1.1. Compared in lower case.
 */
export function passwordFault({ password, isCommon, known }: PasswordCheck): string | null {
  const length = [...password].length;
  if (length === 0) return 'Enter a password';
  if (length < SHORTEST_PASSWORD) return `Use at least ${SHORTEST_PASSWORD} characters. This has ${length}. Four or five unrelated words are easy to keep`;
  if (length > LONGEST_PASSWORD) return `Use at most ${LONGEST_PASSWORD} characters`;
  const lower = password.toLowerCase();
  if (variantsOf(lower).some(isCommon)) return 'This is one of the passwords that are tried first, or one with a few signs added. Choose another';
  if (isMonotone(lower)) return 'This repeats a few signs or runs along the alphabet or the numbers. Choose another';
  if (wordsOf(known).some((word) => lower.includes(word) && lower.replaceAll(word, '').length < SHORTEST_PASSWORD / 2)) {
    return 'This is mostly a name or an address that others know. Choose another';
  }
  return null;
}

/** The password itself, without the signs at its ends, and its half when it is written twice. */
function variantsOf(lower: string): readonly string[] {
  const bare = lower.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, '');
  const half = lower.slice(0, lower.length / 2);
  return [lower, bare, half.repeat(2) === lower ? half : ''].filter((word) => word.length >= FEWEST_LEFT);
}

/** At most three different signs, or each is the one before it or a neighbour of that. */
function isMonotone(lower: string): boolean {
  const codes = [...lower].map((sign) => sign.codePointAt(0) ?? 0);
  const steps = codes.slice(1).map((code, index) => code - (codes[index] ?? 0));
  return new Set(codes).size <= 3 || steps.every((step) => Math.abs(step) <= 1);
}

/** Parts long enough to make up a password. */
function wordsOf(known: readonly string[]): readonly string[] {
  return known.flatMap((text) => [text, ...text.split(/[^\p{L}\p{N}]+/u)]).map((word) => word.toLowerCase().replace(/\s+/g, '')).filter((word) => word.length >= FEWEST_LEFT);
}
