import type { SeverityClass } from '@/lib/content/model';

const WORDS: Readonly<Record<SeverityClass, string>> = { 1: 'Scare', 2: 'Slight', 3: 'Serious', 4: 'Severe', 5: 'Could kill' };

/** A severity class in one or two words; the scale of the content says what each stands for. */
export function severityWord(severity: SeverityClass): string { return WORDS[severity]; }
