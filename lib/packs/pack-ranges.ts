/** Bounds of what this project judges: those of the content's inputs where it has one, else our judgement. */
export const PACK_RANGES = {
  series: { least: 1, most: 8, unit: 'cells', whole: true },
  parallel: { least: 1, most: 4, unit: 'rows', whole: true },
  capacityMah: { least: 100, most: 5000, unit: 'mAh', whole: true },
  cRating: { least: 1, most: 300, unit: 'C' },
  printedWh: { least: 0.3, most: 200, unit: 'Wh' },
  chargesBefore: { least: 0, most: 3000, unit: 'charges', whole: true },
} as const;
