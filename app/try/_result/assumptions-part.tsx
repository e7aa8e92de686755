'use client';

import { memo } from 'react';
import { Disclosure, DisclosureTable } from '@/app/_components/ui/disclosure';
import { Section } from '@/app/_components/ui/section';
import { Table } from '@/app/_components/ui/table';
import type { Content } from '@/lib/content/model';
import type { Assumption, AssumedInput, ScoreResult } from '@/lib/core/result';
import { useContent } from '../_state/content-context';
import { AnswerName } from './answer-name';

/** Every number the result rests on, and everything that was taken because nobody said it. */
export const AssumptionsPart = memo(function AssumptionsPart({ result }: { readonly result: ScoreResult }) {
  const content = useContent();
  const kinds = byKind(result.assumptions);
  return (
    <Section id="assumptions" title="What it rests on" aside={`${result.assumptions.length} numbers`}>
      <h3>Taken because it was not said</h3>
      {result.assumedInputs.length === 0 ? <p className="after">Nothing: every figure of this room was given.</p> : <AssumedTable content={content} inputs={result.assumedInputs} />}
      {result.notSureControls.length === 0 ? null : <Disclosure summary={`${result.notSureControls.length} controls nobody is sure about`}><ul>{result.notSureControls.map((id) => <li key={id}>{controlTitle(content, id)}</li>)}</ul></Disclosure>}
      <h3 className="after">Numbers of the model</h3>
      <p>Most are our judgement, and say so. They rank; they do not permit.</p>
      {kinds.map(([kind, assumptions]) => (
        <DisclosureTable
          key={kind}
          summary={`${capital(kind)}: ${assumptions.length}`}
          caption={`Numbers of the kind: ${kind}`}
          columns={[
            { head: 'What', cell: (row) => row.what },
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

function AssumedTable({ content, inputs }: { readonly content: Content; readonly inputs: readonly AssumedInput[] }) {
  return (
    <Table
      caption="Figures taken because they were not said"
      columns={[
        { head: 'What', cell: (row) => <AnswerName content={content} name={row.input} title={row.title} /> },
        { head: 'Taken as', numeric: true, cell: (row) => `${figure(row.value)} ${row.unit}` },
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
