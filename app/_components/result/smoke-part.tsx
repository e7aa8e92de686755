'use client';

import { memo, useState } from 'react';
import { SmokeCurve } from '@/app/_components/charts/smoke-curve';
import { DisclosureTable } from '@/app/_components/ui/disclosure';
import { GuidanceText } from '@/app/_components/ui/guidance-text';
import { Section } from '@/app/_components/ui/section';
import { Segment } from '@/app/_components/ui/segment';
import type { SmokeThresholds } from '@/lib/charts/smoke-points';
import type { FilledGuidance } from '@/lib/content/fill-guidance';
import type { SmokeCase, SmokeLevel, SmokeScreening } from '@/lib/core/result';
import { ppm } from '@/lib/wording/measures';
import { percent, rounded } from '@/lib/wording/numbers';
import { severityWord } from '@/lib/wording/severity';

type CaseName = keyof SmokeScreening;

const CASES: readonly { readonly value: CaseName; readonly label: string }[] = [
  { value: 'lot', label: 'Packs that touch' },
  { value: 'one', label: 'One pack' },
  { value: 'allOnTable', label: 'All on the table' },
  { value: 'storeLot', label: 'In the store' },
  { value: 'vehicle', label: 'In the vehicle' },
];

interface SmokePartProps {
  readonly cases: SmokeScreening;
  readonly thresholds: SmokeThresholds;
  /** what stands with the picture, what it does not say first */
  readonly guidance: readonly FilledGuidance[];
}

/** What the smoke of this room's packs does to this room's air. */
export const SmokePart = memo(function SmokePart({ cases, thresholds, guidance }: SmokePartProps) {
  const [name, setName] = useState<CaseName>('lot');
  const [caution, ...texts] = guidance;
  const smoke = cases[name];
  return (
    <Section id="smoke" title="Smoke" aside={sizeOf(smoke)}>
      <Segment id="smoke-case" legend="What burns" options={CASES} value={name} onChange={setName} />
      <SmokeCurve smoke={smoke} thresholds={thresholds} caution={caution === undefined ? null : <GuidanceText guidance={caution} />} />
      <FurtherFigures smoke={smoke} />
      {texts.map((text) => (
        <div key={text.id} className="notice after">
          <h3>{text.title}</h3>
          <GuidanceText guidance={text} />
        </div>
      ))}
    </Section>
  );
});

function sizeOf({ packs, volume, airChanges }: SmokeCase): string {
  return `${packs} ${packs === 1 ? 'pack' : 'packs'}, ${rounded(volume)} m³, ${rounded(airChanges)} air changes an hour`;
}

const FIGURES: readonly { readonly what: string; readonly of: (level: SmokeLevel) => string }[] = [
  { what: 'Hydrogen fluoride, peak in the mixed room', of: (level) => ppm(level.HF.peakPpm) },
  { what: 'Hydrogen fluoride beside the packs', of: (level) => (level.nearFieldPpm === 0 ? 'not worked out here' : ppm(level.nearFieldPpm)) },
  { what: 'Carbon monoxide, peak in the mixed room', of: (level) => ppm(level.CO.peakPpm) },
  { what: 'Carbon monoxide dose until everybody is out (1 is incapable)', of: (level) => rounded(level.coDose) },
  { what: 'Gas given off', of: (level) => `${rounded(level.ventGasL)} L` },
  { what: 'Can burn or burst in a space smaller than', of: (level) => `${rounded(level.flammableBelowL)} L` },
  { what: 'Share of what the whole room would need to burn', of: (level) => percent(level.roomShareOfLfl) },
  { what: 'Severity by smoke', of: (level) => severityWord(level.smokeClass) },
];

function FurtherFigures({ smoke }: { readonly smoke: SmokeCase }) {
  return (
    <DisclosureTable
      summary="More figures"
      caption="Gas and smoke of this case"
      columns={[
        { head: 'What', cell: (row) => row.what },
        { head: 'Low', numeric: true, cell: (row) => row.of(smoke.levels.low) },
        { head: 'Middle', numeric: true, cell: (row) => row.of(smoke.levels.mid) },
        { head: 'High', numeric: true, cell: (row) => row.of(smoke.levels.high) },
      ]}
      rows={FIGURES}
      rowKey={(row) => row.what}
    />
  );
}
