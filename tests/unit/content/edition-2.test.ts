import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { contentFaults } from '@/lib/content/checks';
import { currentContent } from '@/lib/content/editions';
import { edition1 } from '@/lib/content/edition-1';
import { edition2 } from '@/lib/content/edition-2';
import { inputsSetBy } from '@/lib/content/question-sets';
import type { Condition, Content } from '@/lib/content/model';
import { validateAnswer } from '@/lib/questionnaire/validate-answer';
import { MIL_STD_882E, THREE_BY_THREE } from '@/lib/reference/risk-matrices';
import { REST_VOLTAGE } from '@/lib/reference/rest-voltage';

const idsOf = (items: readonly { readonly id: string }[]): readonly string[] => items.map(({ id }) => id);
const optionsOf = (content: Content): readonly string[] =>
  content.questions.flatMap((question) => ('options' in question ? question.options.map((option) => `${question.id} ${option.id}`) : []));
const branchesOf = (content: Content): readonly string[] => content.scenarios.flatMap(({ id, branches }) => branches.map((branch) => `${id} ${branch.id}`));
const fieldsOf = (content: Content): readonly string[] => content.questions.flatMap((question) => inputsSetBy(question).map((input) => `${question.id} ${input}`));
const missing = (before: readonly string[], now: readonly string[]): readonly string[] => before.filter((id) => !now.includes(id));

it('has no fault, and says its number and version', () => {
  expect(contentFaults(edition2)).toEqual([]);
  expect([edition2.edition, edition2.version]).toEqual([2, '2.0.0']);
});

it('is in force', () => { expect(currentContent).toBe(edition2); });

describe('what the first edition named', () => {
  it.each(['controls', 'questions', 'inputs', 'exposures', 'scenarios', 'stops', 'sections', 'groups', 'physics'] as const)('%s: every id is still there', (list) => {
    expect(missing(idsOf(edition1[list]), idsOf(edition2[list]))).toEqual([]);
  });

  it('branches, options and fields are still there', () => {
    expect(missing(branchesOf(edition1), branchesOf(edition2))).toEqual([]);
    expect(missing(optionsOf(edition1), optionsOf(edition2))).toEqual([]);
    expect(missing(fieldsOf(edition1), fieldsOf(edition2))).toEqual([]);
  });

  it('a page without an effect is gone with its reason: two constants decided nothing', () => {
    expect(missing(idsOf(edition1.constants), idsOf(edition2.constants))).toEqual(['noPainFlux', 'seasonDays']);
  });

  it.each(['bad-store', 'everything', 'good-hall', 'ordinary-classroom'])('the answers of %s can be read', (name) => {
    const { answers } = JSON.parse(readFileSync(`tests/reference-data/${name}.json`, 'utf8')) as { answers: Record<string, unknown> };
    const refused = Object.entries(answers).filter(([id, answer]) => {
      const question = edition2.questions.find((candidate) => candidate.id === id);
      return question === undefined || !validateAnswer(question, answer).ok;
    });
    expect(refused).toEqual([]);
  });

  it('options whose bar has risen are read with caution and no longer offered', () => {
    const earlier = edition2.questions.flatMap((question) => ('options' in question ? question.options : [])
      .flatMap((option) => (option.earlier === true ? [`${question.id} ${option.id}: ${Object.values(option.sets.controls).join()}`] : [])));
    expect(earlier).toEqual(['room-exits partly: not sure', 'damaged-outdoors yes: partly', 'damaged-handover yes: partly', 'people-crash yes: partly']);
  });
});

describe('the lines of ticks', () => {
  const ticks = edition2.questions.flatMap((question) => (question.kind === 'ticks' ? [question] : []));

  it('took the place of every list of the first edition', () => {
    const lists = edition1.questions.filter(({ kind }) => kind === 'multi').map(({ id }) => id);
    expect(ticks.map(({ id }) => id).sort()).toEqual([...lists].sort());
  });

  it('say of each line whether an older list speaks of it', () => {
    const before = new Set(optionsOf(edition1));
    for (const { id, options } of ticks) for (const line of options) expect(line.newIn, `${id} ${line.id}`).toBe(before.has(`${id} ${line.id}`) ? undefined : 2);
  });

  it('do not count a lidded box as one whose lid rests loose', () => {
    expect(ticks.flatMap(({ options }) => options.filter(({ fromList }) => fromList !== undefined).map(({ id }) => id))).toEqual(['sand']);
  });
});

/** Names of inputs in formulas, conditions and moves of the content, and in quotes anywhere in the calculation. */
function inputsUsed(): ReadonlySet<string> {
  const inConditions = (condition: Condition): readonly string[] => {
    if ('all' in condition) return condition.all.flatMap(inConditions);
    if ('any' in condition) return condition.any.flatMap(inConditions);
    return 'input' in condition && condition.input !== undefined ? [condition.input] : [];
  };
  const formulas = [...edition2.exposures.map(({ formula }) => formula), ...edition2.inputs.flatMap(({ default: value }) => (typeof value === 'string' ? [value] : []))];
  const severities = edition2.scenarios.flatMap(({ branches }) => branches.flatMap(({ severity }) => ('sharedBy' in severity ? severity.sharedBy ?? [] : [])));
  const files = readdirSync('lib/core', { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
  const quoted = files.flatMap((file) => readFileSync(join('lib/core', file), 'utf8').match(/'[A-Za-z]\w*'/g) ?? []).map((word) => word.slice(1, -1));
  return new Set([
    ...formulas.flatMap((formula) => formula.match(/[A-Za-z]\w*/g) ?? []),
    ...edition2.stops.flatMap(({ when }) => inConditions(when)),
    ...edition2.questions.flatMap(({ showIf }) => (showIf === undefined ? [] : inConditions(showIf))),
    ...severities, ...quoted,
  ]);
}

it('every input does something, or says that it stands on paper only', () => {
  const used = inputsUsed();
  /** read by the rule of pack counts, which the content states in words */
  const byRule = ['packsPerOutput'];
  const idle = edition2.inputs.filter(({ id, printed }) => printed !== true && !used.has(id) && !byRule.includes(id));
  expect(idsOf(idle)).toEqual([]);
  expect(edition2.inputs.filter(({ id, printed }) => printed === true && used.has(id) && id !== 'limitAsked').map(({ id }) => id)).toEqual([]);
});

describe('tables promised as data', () => {
  it('are those the calculation uses', () => {
    expect(edition2.tableMatrices).toEqual([MIL_STD_882E, THREE_BY_THREE]);
    expect(edition2.restVoltage?.points).toEqual(REST_VOLTAGE);
  });

  it.each(['store-air', 'arena-air'])('the answers to %s set the middle of the air class of the same id', (id) => {
    const question = edition2.questions.find((candidate) => candidate.id === id);
    const set = question?.kind === 'choice' ? question.options.map((option) => [option.id, Object.values(option.sets.inputs)[0]]) : [];
    expect(set).toEqual(edition2.airClasses?.map((air) => [air.id, air.mid]));
  });
});
