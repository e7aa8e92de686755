/** What a number rests on, first words; a kind may go on in words ("published low and high; our judgement middle"). */
export type Kind = string;

/** How bad an end is, from 1, no more than a scare, to 5, life in danger; `severityScale` of the edition has the words. */
export type SeverityClass = 1 | 2 | 3 | 4 | 5;

/** What an input holds; a number is in the unit of its definition. */
export type InputValue = number | string;

/** The four grades, from mild to worst; a matrix may use its own word for each. */
export type Grade = 'low' | 'moderate' | 'high' | 'extreme';

/** How the core calculates something, told to whoever reads the method; nothing is read out of it. */
export interface RuleInWords { readonly summary: string; readonly steps: readonly string[]; readonly kind: Kind }
