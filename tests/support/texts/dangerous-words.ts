import type { Passage } from './project-texts';

/** A sentence that could send somebody towards a pack that burns or vents. */
export interface DangerousSentence { readonly file: string; readonly sentence: string; readonly word: string }

/** What a person does with hands or feet, and must not do near such a pack. All forms of each word. */
const ACTS = [
  'fetch(?:es|ed|ing)?', 'carr(?:y|ies|ied|ying)', 'mov(?:e|es|ed|ing)', 'unplug\\w*', 'disconnect\\w*', 'throw(?:s|n|ing)?', 'threw',
  'fight(?:s|ing)?', 'fought', 'extinguish\\w*', 'put(?:s|ting)? (?:\\w+ ){0,2}out', 'pick(?:s|ed|ing)? (?:\\w+ )?up', 'lift(?:s|ed|ing)?', 'grab\\w*',
  'remov(?:e|es|ed|ing)', 'approach\\w*', 'go(?:es|ing)? (?:back|near|in|inside|into|to look|close)', 'get(?:s|ting)? close', 'walk(?:s|ing)? (?:up )?to', 'return(?:s|ing)? to',
  'enter(?:s|ed|ing)?', 'pour\\w*', 'smother\\w*', 'cover(?:s|ed|ing)?', 'douse\\w*', 'spray\\w*', 'submerge\\w*', 'soak\\w*', 'drown\\w*', 'quench\\w*', 'bur(?:y|ies|ied)',
  'rescu\\w*', 'save (?:the|a|your) packs?', 'touch(?:es|ed|ing)?', 'handl(?:e|es|ed|ing)', 'hold (?:it|the pack)', 'take (?:it|them|the packs?|a pack|out|away|hold)', 'takes (?:it|them|the packs?|a pack|out|away|hold|sand)', 'tak(?:en|ing) (?:out|away|to|outdoors)',
  'bring(?:s|ing)?', 'drag\\w*', 'push\\w*', 'kick\\w*', 'drop(?:s|ped|ping)?', 'puncture\\w*', 'pierc(?:e|es|ing)', 'isolat(?:e|es|ing)',
  'put(?:s|ting)? (?:it|them|the packs?|a pack|packs|down)', 'set(?:s|ting)? (?:it|them|\\w+ )?(?:aside|apart)', 'open(?:s|ed|ing)? (?:it|(?:the |a |its )?(?:\\w+ )?(?:box|bag|case|container|cupboard|cabinet|store|boot|door|lid|locker|charger))',
  'reach(?:es|ing)? in(?:to)?', 'stay(?:s|ing)? (?:with|beside|near|at)', 'stand(?:s|ing)? (?:beside|near|by|over)', 'cool(?:s|ing)? (?:it|them|the packs?)', 'water', 'sand', 'blankets?',
  'look(?:s|ing)? (?:in|into|inside|closer)', 'check(?:s|ed|ing)? (?:on )?(?:it|them|the packs?)',
];
const HAZARDS = '(?:packs?|batter(?:y|ies)|lipos?|cells?|fires?|smok\\w*|flam\\w*|hot|burn\\w*|vent(?:s|ed|ing)?|hiss\\w*|swollen|swell\\w*|puffed|sparks?|heat|runaway)';
const ACT = new RegExp(`\\b(?:${ACTS.join('|')})\\b`, 'i');
const HAZARD = new RegExp(`\\b${HAZARDS}\\b`, 'i');

/** Sentences with such a word in a passage that speaks of packs, fire, smoke or heat. Each sentence of a file once. */
export function dangerousSentences(passages: readonly Passage[]): readonly DangerousSentence[] {
  const found = new Map<string, DangerousSentence>();
  for (const { file, sentences } of passages) {
    if (!sentences.some((sentence) => HAZARD.test(sentence))) continue;
    for (const sentence of sentences) {
      const word = ACT.exec(sentence)?.[0];
      if (word !== undefined) found.set(`${file}\n${sentence}`, { file, sentence, word });
    }
  }
  return [...found.values()];
}
