import { memo } from 'react';
import { Disclosure, DisclosureTable } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { Table } from '@/app/_components/ui/table';
import type { Content } from '@/lib/content/model';
import type { Assumption, AssumedInput, ScoreResult } from '@/lib/core/result';
import { inputWords } from '@/lib/wording/input-words';
import { quantityWords } from '@/lib/wording/quantities';
import type { DocumentParts, QuestionAddress } from './document-parts';
import { AnswerName } from './answer-name';
import { PrintedPart } from './printed-part';

interface AssumptionsPartProps { readonly content: Content; readonly result: ScoreResult; readonly parts: DocumentParts; readonly addressOf: QuestionAddress }

/** Every number the result rests on, and everything that was taken because nobody said it. */
export const AssumptionsPart = memo(function AssumptionsPart({ content, result, parts, addressOf }: AssumptionsPartProps) {
  const kinds = byKind(result.assumptions);
  // What is only printed has a list of its own.
  const printed = new Set(content.inputs.filter((input) => input.printed === true).map((input) => input.id));
  const assumed = result.assumedInputs.filter((one) => !printed.has(one.input));
  return (
    <Section id="assumptions" title="What it rests on" aside={`${result.assumptions.length} numbers`}>
      <h3>Taken because it was not said</h3>
      {assumed.length === 0 ? <p className="after">Nothing: every figure of this room was given.</p> : <AssumedTable content={content} addressOf={addressOf} inputs={assumed} />}
      {result.notSureControls.length === 0 ? null : <Disclosure summary={`${result.notSureControls.length} controls nobody is sure about`}><ul>{result.notSureControls.map((id) => <li key={id}>{controlTitle(content, id)}</li>)}</ul></Disclosure>}
      <PrintedPart content={content} parts={parts} addressOf={addressOf} />
      <h3 className="after">Numbers of the model</h3>
      <p>Most are our judgement, and say so. They rank; they do not permit.</p>
      {kinds.map(([kind, assumptions]) => (
        <DisclosureTable
          key={kind}
          summary={`${capital(kind)}: ${assumptions.length}`}
          caption={`Numbers of the kind: ${kind}`}
          columns={[
            { head: 'What', cell: (row) => whatWords(row) },
            { head: 'Value', numeric: true, cell: (row) => `${figure(row.value)}${range(row)}` },
            { head: 'Unit', cell: (row) => row.unit },
            { head: 'Source', cell: (row) => row.source },
          ]}
          rows={assumptions}
          rowKey={(row) => row.id}
        />
      ))}
    </Section>
  );
});

function AssumedTable({ content, addressOf, inputs }: { readonly content: Content; readonly addressOf: QuestionAddress; readonly inputs: readonly AssumedInput[] }) {
  return (
    <Table
      caption="Figures taken because they were not said"
      columns={[
        { head: 'What', cell: (row) => <AnswerName content={content} addressOf={addressOf} name={row.input} title={row.title} /> },
        { head: 'Taken as', numeric: true, cell: (row) => inputWords(content, row.input, row.value, row.unit) },
        { head: 'Because', cell: (row) => row.because },
      ]}
      rows={inputs}
      rowKey={(row) => row.input}
    />
  );
}

/** Kinds in the order in which they first appear, each with its numbers. */
function byKind(assumptions: readonly Assumption[]): readonly (readonly [string, readonly Assumption[]])[] {
  const kinds = [...new Set(assumptions.map((each) => each.kind))];
  return kinds.map((kind) => [kind, assumptions.filter((each) => each.kind === kind)] as const);
}

const controlTitle = (content: Content, id: string): string => content.controls.find((control) => control.id === id)?.title ?? id;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const NUMBER = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 4 });
const figure = (value: number | string): string => (typeof value === 'number' ? NUMBER.format(value) : value);
const range = ({ low, high }: Assumption): string => (low === null || high === null || low === high ? '' : ` (${figure(low)} to ${figure(high)})`);

/** The physical numbers come with the names that the calculation has for them. */
function whatWords({ id, what }: Assumption): string {
  const [, name] = /^(?:physics|constant)\.(\w+)$/.exec(id) ?? [];
  return quantityWords(name ?? '') ?? what;
}
