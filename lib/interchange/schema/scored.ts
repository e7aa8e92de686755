import { z } from 'zod';
import { TICK_WORDS } from '@/lib/questionnaire/ticks';
import { above, between, byId, line, list, oneOf, whole } from './leaves';

/** Parts of the document that decide its numbers. */

const answer = z.union([
  z.string(),
  z.array(z.string()),
  z.record(z.string(), z.number()),
  z.record(z.string(), z.enum(TICK_WORDS)),
], { error: 'an option id, a list of option ids, an object with numbers or words, text, or "not sure"' });
export const answersSchema = byId(answer, 'an answer by question id').meta({
  description: 'Answers by question id. Choice: the id of the option. Ticks: an object with "yes", "partly", "no" or "not sure" for each line; a line left out is not answered. A list of ids of the lines that are true, as edition 1 took it, is read too. Number: an object with a number for each input. Text: the text. Any question that offers it: "not sure".',
});

export const notSureTicksSchema = byId(list(z.string(), 0, 40, 'option ids'), 'lists of option ids by question id').meta({
  description: 'For a question answered with a list: the options about which somebody is not sure, by question id. An id must not be ticked and not sure at once.',
});

export const exposuresSchema = byId(between(0, 1e9), 'a number by exposure id').meta({
  description: 'Counted exposures of a season that are written over the ones computed from the answers, by exposure id, in the unit of the exposure.',
});

export const inputsSchema = byId(z.union([z.number(), z.string()], { error: 'a number or a word' }), 'a value by input id').meta({
  description: 'Inputs that are written over what the answers or the defaults say, by input id, in the unit of the input.',
});

const STATES = ['in place', 'partly', 'absent', 'not sure', 'not applicable'] as const;
const state = oneOf(STATES);
const stateWithReason = z.strictObject({
  state: state.meta({ description: 'The state that holds.' }),
  reason: line(300).meta({ description: 'Why the answer does not tell the truth here; the report prints it.' }),
}, { error: 'only "state" and "reason"' });
export const statesSchema = byId(
  z.union([state, stateWithReason], { error: `one of ${STATES.map((word) => `"${word}"`).join(', ')}, or an object with "state" and "reason"` }),
  'a state by control id',
).meta({
  description: 'States of controls that are written over what the answers say, by control id. A reason is wanted with each: {"state": "in place", "reason": "…"}. The bare state is read too.',
});

const recorded = z.strictObject({
  events: whole(0, 1e6).meta({ description: 'Events seen, a whole number.' }),
  exposure: above(0, 1e9).meta({ description: "The exposure in which they were seen, in the unit of the scenario's exposure." }),
  preventiveProduct: above(0, 1).optional().meta({
    description: "Mean effective failure of the preventive controls while the record was made, above 0 and at most 1. Without it today's is taken, and the result says so.",
  }),
}, { error: 'an object with "events", "exposure" and, if known, "preventiveProduct"' });
export const recordSchema = byId(recorded, "the school's own record by scenario id").meta({
  description: "The school's own record of a scenario, by scenario id; it moves the likelihood.",
});

export const plannedSchema = list(z.string(), 0, 200, 'control ids').meta({
  description: 'Ids of the controls that open actions will put in place. They decide the planned grades.',
});

const grade = oneOf(['low', 'moderate', 'high', 'extreme']);
const MATRICES = ['five-by-five', 'mil-std-882e', 'three-by-three'] as const;
const ownMatrix = z.strictObject({
  title: line(100).meta({ description: 'What the school calls its matrix.' }),
  from: list(between(0, 1000, 'events a season'), 2, 10, 'numbers').meta({ description: 'Lower bound of each likelihood level in events a season: the first is 0, then rising.' }),
  words: list(line(40), 2, 10, 'words').meta({ description: 'The word for each likelihood level, rarest first.' }),
  cells: list(list(grade, 5, 5, 'grades'), 2, 10, 'rows').meta({ description: 'A row for each likelihood level, rarest first, with a grade for each severity class 1 to 5. A grade never falls with likelihood or class.' }),
}, { error: 'an object with "title", "from", "words" and "cells"' });
export const matrixSchema = z.union([z.enum(MATRICES), ownMatrix], {
  error: `one of ${MATRICES.map((word) => `"${word}"`).join(', ')}, or an object with "title", "from", "words" and "cells"`,
}).meta({ description: "The risk matrix: one by name, or the school's own. The first when missing." });
