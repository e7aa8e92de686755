/** What nobody may be told to do, in any text. A pack may "go back to storage charge"; a person may not go back. */
const ORDER = new RegExp(`\\b(?:${[
  'fight\\w*', 'approach\\w*', 'extinguish(?!er)\\w*', 'smother\\w*', 'douse\\w*', 'put(?:s|ting)? (?:\\w+ ){0,2}out\\b', 'fetch\\w*',
  'rescue (?:him|her|them|it|the|a|any|your)\\b', 'enter(?:s|ing)? (?:\\w+ ){0,2}(?:rooms?|halls?|buildings?|smoke|stores?|cupboards?|areas?|school|house|garage)\\b',
  'go(?:es|ing)? (?:near|inside)', 'go(?:es|ing)? back(?! to storage charge)', 'go(?:es|ing)? in\\b', 'go(?:es|ing)? into(?! thermal runaway| the case)',
  'throw(?:s|ing)?\\b(?! away)', 'pour\\w*',
].join('|')})`, 'i');
/** Forbidden before it is named, or left to those alone who may. */
const NEGATED = /\b(?:nobody|never|not|no|neither|nor|without|who may|only (?:the fire service|named people))\b/i;

/** @returns the words that order somebody into danger, unless the sentence forbids it before it names it */
export function orderIntoDanger(sentence: string): string | undefined {
  const order = ORDER.exec(sentence);
  return order === null || NEGATED.test(sentence.slice(0, order.index)) ? undefined : order[0];
}

/** Numbers that are dialled in one country or another, and any short number after a word for calling. */
const COUNTRY_NUMBER = /(?<![\d.,#/-])(?:999|911|112|000)(?![\d.,]?\d)/;
const CALLED_NUMBER = /\b(?:call|calls|calling|dial|dials|dialling|ring|phone|telephone)(?: the| at| on|:)* (?:fire service |ambulance |emergency services )?(?:on |at )?\d{2,4}\b/i;

/** @returns the number a sentence tells somebody to call: numbers are filled in by the school */
export function numberToCall(sentence: string): string | undefined {
  return (COUNTRY_NUMBER.exec(sentence) ?? CALLED_NUMBER.exec(sentence))?.[0];
}
