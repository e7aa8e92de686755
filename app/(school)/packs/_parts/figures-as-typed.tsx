'use client';

import { useEffect, useRef, useState } from 'react';
import { Stat, Stats } from '@/app/_components/ui/stat';
import type { CellTypeFacts } from '@/lib/packs/cell-types';
import { type PackFigures, packFigures } from '@/lib/packs/pack-figures';
import { PACK_RANGES } from '@/lib/packs/pack-ranges';
import { readTypedNumber } from '@/lib/questionnaire/read-number';

/**
 * What follows from the label while it is typed: energy, charge current, how it may fly. Without a script there is
 * nothing to follow; the page of the pack shows the same.
 */
export function FiguresAsTyped({ cellTypes }: { readonly cellTypes: readonly CellTypeFacts[] }) {
  const [figures, setFigures] = useState<PackFigures | null>(null);
  const here = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const form = here.current?.closest('form');
    if (!form) return;
    const read = () => setFigures(figuresOf(new FormData(form), cellTypes));
    read();
    form.addEventListener('input', read);
    return () => form.removeEventListener('input', read);
  }, [cellTypes]);
  return (
    <div ref={here} className="figures-typed" role="status" aria-label="What follows from the label">
      {figures === null ? <p className="small muted">Energy, charge current and how it may fly stand here when cells, capacity and full voltage are filled in.</p> : <FigureStats figures={figures} />}
    </div>
  );
}

function FigureStats({ figures }: { readonly figures: PackFigures }) {
  const { energyWh, energyFrom, chargeAt1C, air, fullV, storageV } = figures;
  return (
    <Stats>
      {energyWh === null ? null : <Stat label={energyFrom === 'printed' ? 'Energy, as printed' : 'Energy, computed'} figure={energyWh.toFixed(1)} unit="Wh" />}
      <Stat label="Charge current at 1C: no more, unless the label allows it and the officer agreed" figure={chargeAt1C.toFixed(2)} unit="A" />
      {fullV === null || storageV === null ? null : <Stat label="Full" figure={fullV.toFixed(1)} unit="V" range={`at storage charge ${storageV.toFixed(1)} V`} />}
      {air === null ? null : <Stat label="On a passenger flight" figure={figures.airClass === 'forbidden' ? 'No' : figures.airClass === 'approval' ? 'Ask' : 'Yes'} range={air} />}
    </Stats>
  );
}

function figuresOf(form: FormData, cellTypes: readonly CellTypeFacts[]): PackFigures | null {
  const cell = cellTypes.find(({ id }) => id === form.get('cellType'));
  const [series, parallel, capacityMah, printedWh] = [numberIn(form, 'series'), numberIn(form, 'parallel'), numberIn(form, 'capacityMah'), numberIn(form, 'printedWh')];
  if (cell === undefined || series === null || capacityMah === null) return null;
  return packFigures({ series, parallel: parallel ?? 1, capacityMah, printedWh }, cell);
}

/** A number of the form within the bounds the form will ask for; anything else shows no figure. */
function numberIn(form: FormData, name: 'series' | 'parallel' | 'capacityMah' | 'printedWh'): number | null {
  const typed = form.get(name);
  const read = typeof typed === 'string' ? readTypedNumber(typed) : null;
  const { least, most } = PACK_RANGES[name];
  return read !== null && read.ok && read.value >= least && read.value <= most ? read.value : null;
}
