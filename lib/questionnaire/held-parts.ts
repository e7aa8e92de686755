/**
 * Parts that a published edition asks for as such ("of these, how many …") without holding them to their whole. What is typed
 * is held to it; a document that was written before is read as it is, and an edition that says `noMoreThan` needs no line here.
 */
const WHOLES: Readonly<Record<string, string>> = { peopleNear: 'peopleRoom' };

/** Returns the parts that are more than what they are a part of, each with what would be right. */
export function partsAboveWhole(numbers: Readonly<Record<string, number | undefined>>): readonly { readonly input: string; readonly message: string }[] {
  return Object.entries(WHOLES).flatMap(([input, whole]) => {
    const [part, most] = [numbers[input], numbers[whole]];
    return part === undefined || most === undefined || part <= most ? [] : [{ input, message: `Enter a number from 0 to ${most}: these are part of the ${most} above` }];
  });
}
