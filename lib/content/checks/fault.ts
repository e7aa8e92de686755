/** One thing that is wrong with an edition, and where. */
export interface ContentFault { readonly where: string; readonly problem: string }

const KINDS = ['published', 'common practice', 'our judgement'];
const PLAIN_ID = /^[a-zA-Z0-9]+(-[a-z0-9]+)*$/;

/** @returns a fault when what a number rests on is not said in the agreed words */
export function kindFaults(kind: string, where: string): readonly ContentFault[] {
  return KINDS.some((word) => kind.includes(word)) ? [] : [{ where, problem: `kind "${kind}"` }];
}

/** @returns a fault for each id that stands twice or is not plain letters, digits and hyphens */
export function idFaults(where: string, items: readonly { readonly id: string }[]): readonly ContentFault[] {
  const seen = new Set<string>();
  return items.flatMap(({ id }) => {
    const faults: ContentFault[] = [];
    if (seen.has(id)) faults.push({ where, problem: `${id} twice` });
    if (!PLAIN_ID.test(id)) faults.push({ where, problem: `${id} is not a plain id` });
    seen.add(id);
    return faults;
  });
}

/** A fault when something that must hold does not. */
export function must(holds: boolean, where: string, problem: string): readonly ContentFault[] {
  return holds ? [] : [{ where, problem }];
}

export const idsOf = (items: readonly { readonly id: string }[]): ReadonlySet<string> => new Set(items.map((item) => item.id));
