'use client';

import { useState } from 'react';
import { Button, ButtonLink } from '@/app/_components/ui/button';
import { ChoiceRows } from '@/app/_components/ui/choice-rows';
import { Empty } from '@/app/_components/ui/empty';
import { ErrorSummary } from '@/app/_components/ui/error-summary';
import { FileDrop } from '@/app/_components/ui/file-drop';
import { MultiTicks, type Tick } from '@/app/_components/ui/multi-ticks';
import { Notice, StopList } from '@/app/_components/ui/notice';
import { Progress } from '@/app/_components/ui/progress';
import { Section } from '@/app/_components/ui/section';
import { Segment } from '@/app/_components/ui/segment';
import { Skeleton } from '@/app/_components/ui/skeleton';
import { Table } from '@/app/_components/ui/table';
import { NumberField, SelectField, TextArea, TextField } from '@/app/_components/ui/text-field';

export function ControlParts() {
  return (
    <>
      <Section id="buttons" title="Buttons" aside="one main a screen; ember only if a person must act now">
        <p className="row"><Button kind="main">Save and go on</Button><Button>Back</Button><Button kind="now">Tell the officer</Button><Button kind="danger">Delete it</Button><ButtonLink kind="plain" href="#fields">Answer again</ButtonLink></p>
        <p className="row after"><Button kind="main" busy>Reading</Button><Button unavailable="Choose a room first.">Submit</Button></p>
        <p className="row after"><Button size="small">Make it an action</Button><Button size="small" kind="plain">Answer again</Button></p>
      </Section>
      <FieldParts />
      <AnswerParts />
      <NoticeParts />
    </>
  );
}

function FieldParts() {
  return (
    <Section id="fields" title="Fields">
      <ErrorSummaryWhenAsked />
      <div className="two after">
        <NumberField id="demo-length" label="Room, length" unit="m" hint="Wall to wall. Half a metre is near enough." defaultValue="9.0" />
        <NumberField id="demo-cell" label="Cell 3" unit="V" error="34.1 V is more than a cell can have. Did you mean 3.41?" defaultValue="34.1" />
        <TextField id="demo-place" label="Where you meet" defaultValue="North gate" />
        <SelectField id="demo-surface" label="Surface" options={[{ value: 'stone', label: 'Stone or ceramic' }, { value: 'wood', label: 'Wood' }]} />
        <TextArea id="demo-words" label="In your words" hint="No names." />
        <FileDrop id="demo-file" label="Drop a room here, or" hint="A .json file. It stays in this browser." accept=".json" onFile={ignoreFile} />
      </div>
    </Section>
  );
}

/** The sheet only shows the part; what is dropped here is not read. */
function ignoreFile(): void {}

function ErrorSummaryWhenAsked() {
  const [attempt, setAttempt] = useState(0);
  if (attempt === 0) return <Button size="small" onClick={() => setAttempt(1)}>Show the summary of errors</Button>;
  return <ErrorSummary title="One answer needs a second look" attempt={attempt} faults={[{ field: 'demo-cell', message: 'Cell 3: 34.1 V is more than a cell can have.' }, { field: null, message: 'A fault that belongs to no field.' }]} />;
}

function AnswerParts() {
  const [surface, setSurface] = useState<string | null>('tiles');
  const [ticks, setTicks] = useState<Readonly<Record<string, Tick>>>({ fumes: 'yes', lead: 'not sure' });
  const [hurt, setHurt] = useState<'yes' | 'no' | 'not sure' | null>(null);
  return (
    <Section id="answers" title="Answers" aside="nothing is preselected; Not sure is last and solid">
      <Progress sections={[{ id: 'a', title: 'Team', questions: 8, answered: 8, notSure: 1 }, { id: 'b', title: 'Room', questions: 14, answered: 6, notSure: 2 }, { id: 'c', title: 'Store', questions: 10, answered: 0, notSure: 0 }]} here="b" aside="about 8 minutes left" />
      <div className="after">
        <ChoiceRows id="demo-charge" legend="What do the packs stand on while they charge?" value={surface} onChange={setSurface} choices={[{ value: 'slab', label: 'Stone slab', hint: 'One piece, 30 cm past the packs.', good: true }, { value: 'tiles', label: 'Tiles on wood' }, { value: 'out', label: 'Outdoors', unavailable: 'This site has no yard.' }]} notSureHint="Honest, and counts as such." />
      </div>
      <div className="after">
        <MultiTicks id="demo-kit" legend="Which of these are so?" rows={[{ value: 'fumes', label: 'Smoke leaves by an opening', hint: 'Not towards the way out.' }, { value: 'lead', label: 'Every lead is whole' }, { value: 'card', label: 'The card hangs at the door' }]} ticks={ticks} onChange={(row, tick) => setTicks({ ...ticks, [row]: tick })} />
      </div>
      <div className="after"><Segment id="demo-hurt" legend="Was anybody hurt?" value={hurt} onChange={setHurt} options={[{ value: 'yes', label: 'Yes' }, { value: 'no', label: 'No' }, { value: 'not sure', label: 'Not sure' }]} /></div>
    </Section>
  );
}

function NoticeParts() {
  return (
    <Section id="notices" title="Notices, lists, waiting">
      <div className="stack wide">
        <Notice level={3} title="Two checks are due">Good to know, no hurry.</Notice>
        <Notice level={3} kind="act" title="W-11 must be isolated">A person must act. Nothing else is ember.</Notice>
        <Notice level={3} kind="done" title="Signed and kept">What happened, and what comes next.</Notice>
        <Notice level={3} kind="not sure" title="Air changes not known">Measuring them would narrow the smoke figures most.</Notice>
        <StopList stops={[{ id: 'demo', title: 'No place outdoors for a pack that vents', why: 'A suspect pack would stay among people.', action: <Button size="small">Answer it</Button> }]} />
        <Table caption="Packs" columns={[{ head: 'Pack', cell: (row) => row.id }, { head: 'Spread, mV', numeric: true, cell: (row) => row.spread }]} rows={[{ id: 'W-11', spread: '310' }, { id: 'W-01', spread: '9' }]} rowKey={(row) => row.id} presses={(row) => row.id === 'W-11'} />
        <div className="two"><Empty level={3} title="No room yet"><p>Choose an example, or drop your own.</p><Button kind="main">Choose an example</Button></Empty><Skeleton words="Computing. You can leave, it goes on." /></div>
      </div>
    </Section>
  );
}
