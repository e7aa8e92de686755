'use client';

import { memo, useState } from 'react';
import { HeatDistances } from '@/app/_components/charts/heat-distances';
import { Section } from '@/app/_components/ui/section';
import { Segment } from '@/app/_components/ui/segment';
import type { Surroundings } from '@/lib/charts/heat-distances';
import type { ScoreResult } from '@/lib/core/result';
import { rounded } from '@/lib/wording/numbers';

const CASES = [{ value: 'lot', label: 'Packs that touch' }, { value: 'one', label: 'One pack' }] as const;

/** How far the fire reaches by itself, against what stands around the table. */
export const HeatPart = memo(function HeatPart({ heats, around }: { readonly heats: ScoreResult['heat']; readonly around: Surroundings }) {
  const [name, setName] = useState<'lot' | 'one'>('lot');
  const heat = heats[name];
  return (
    <Section id="heat" title="Heat at the charging table" aside={`about ${rounded(heat.mid.Q_kW)} kW at its fiercest`}>
      <Segment id="heat-case" legend="What burns" options={CASES} value={name} onChange={setName} />
      <HeatDistances heat={heat} around={around} />
    </Section>
  );
});
