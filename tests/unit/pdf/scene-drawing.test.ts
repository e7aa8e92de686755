import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Scene } from '@/lib/charts/scene';
import { COLOUR, GRADE_COLOURS } from '@/lib/pdf/render/paper-colours';
import { SceneDrawing } from '@/lib/pdf/render/scene-drawing';
import { FILLS, LINES } from '@/lib/pdf/render/scene-styles';
import { renderSample } from '@/tests/support/pdf/sample-paper';
import { asFile, runTool, textOf } from '@/tests/support/pdf/tools';
import { results, scenesOf } from '../charts/venues';

const tokens = readFileSync('app/styles/tokens.css', 'utf8');
const token = (name: string) => new RegExp(`--${name}: (#[0-9a-f]{6})`).exec(tokens)?.[1];
const style = readFileSync('app/styles/charts.css', 'utf8');
const rule = (name: string) => new RegExp(String.raw`\.chart \.${name} \{([^}]*)\}`).exec(style)?.[1] ?? '';

describe('colours on paper', () => {
  it('are those of the light theme, on white', () => {
    for (const [key, name] of [['ink', 'ink'], ['ink2', 'ink-2'], ['well', 'well'], ['edge', 'edge'], ['line', 'line'], ['grain', 'grain'], ['ember', 'ember']] as const) expect(COLOUR[key], name).toBe(token(name));
    for (const grade of ['low', 'moderate', 'high', 'extreme'] as const) expect(GRADE_COLOURS[grade]).toEqual({ mark: token(`g-${grade}`), cell: token(`c-${grade}`), onCell: token(`on-c-${grade}`) });
    expect(GRADE_COLOURS.none).toEqual({ mark: token('ink-2'), cell: token('c-none'), onCell: token('on-c-none') });
  });
});

describe('a role', () => {
  const widthIn = (css: string) => Number(/stroke-width: ([\d.]+)/.exec(css)?.[1]);
  it('is drawn as wide and as broken as on the screen', () => {
    for (const [role, { strokeWidth, strokeDasharray }] of Object.entries(LINES)) {
      const css = rule(`l-${role}`);
      expect(css, role).not.toBe('');
      if (css.includes('stroke-width')) expect(strokeWidth, role).toBe(widthIn(css));
      expect(strokeDasharray, role).toBe(/stroke-dasharray: ([\d ]+)/.exec(css)?.[1]);
    }
  });

  it('is filled as on the screen', () => {
    for (const [role, { fill, strokeWidth }] of Object.entries(FILLS)) {
      const css = rule(`r-${role}`);
      expect(css, role).not.toBe('');
      expect(fill === 'none', role).toBe(css.includes('fill: none'));
      expect(strokeWidth === undefined, role).toBe(!css.includes('stroke-width'));
      if (strokeWidth !== undefined) expect(strokeWidth, role).toBe(widthIn(css));
    }
  });
});

describe('a picture on paper', () => {
  const picked = ['matrix', 'bow tie charge-runaway', 'smoke one 672', 'heat one 672', 'tornado 326'].map((name) => scenesOf(results[0]!).find((candidate) => candidate.name === name)!.scene);

  it('says every word of its scene, in letters of nine points or more', async () => {
    const pdf = await renderSample({ scenes: picked });
    const text = textOf(pdf).replaceAll(/\s+/g, ' ');
    for (const { marks } of picked) for (const mark of marks) if (mark.kind === 'text') expect(text).toContain(mark.text.trim().replaceAll(/\s+/g, ' '));
    const sizes = Array.from(runTool('pdftohtml', ['-xml', '-stdout', '-zoom', '1', asFile(pdf)]).text.matchAll(/<fontspec id="\d+" size="(\d+)"/g), ([, size]) => Number(size));
    for (const size of sizes) expect(size).toBeGreaterThanOrEqual(9);
  });

  it('is not made where its letters would be too small', () => {
    const scene: Scene = { width: 672, height: 10, title: 't', marks: [] };
    expect(() => SceneDrawing({ scene, width: 447 })).toThrow('too small for paper');
    expect(() => SceneDrawing({ scene, width: 449 })).not.toThrow();
  });

  it('has sand only inside of where it belongs', async () => {
    const scene: Scene = { width: 672, height: 100, title: 't', marks: [{ kind: 'rect', role: 'grain-edge', x: 100, y: 20, width: 60, height: 30 }, { kind: 'path', role: 'grain', d: 'M200,20L260,20L260,50L200,50Z' }] };
    const content = runTool('qpdf', ['--qdf', '--object-streams=disable', asFile(await renderSample({ scenes: [scene] })), '-']).text;
    const points = Array.from(content.matchAll(/^([\d.]+) ([\d.]+) m\n([\d.]+) \2 l$/gm), ([, x, y, to]) => ({ x: Number(x), y: Number(y), length: Number(to) - Number(x) })).filter(({ length }) => length > 0 && length < 0.02);
    expect(points.length).toBeGreaterThan(30);
    for (const { x, y } of points) expect(((x >= 100 && x <= 160) || (x >= 200 && x <= 260)) && y >= 20 && y <= 50, `${x} ${y}`).toBe(true);
  });
});
