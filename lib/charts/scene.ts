import type { Grade } from '@/lib/core/result';

/** The two widths that every chart is drawn at; text keeps its size in both. */
export type ChartWidth = 672 | 326;
export const WIDE: ChartWidth = 672;
export const NARROW: ChartWidth = 326;

/** Size of all text in a chart, px. */
export const TEXT_SIZE = 13.5;
/** Distance from one line of text to the next, px. */
export const LINE_HEIGHT = 16;

/** What a mark means; screen and paper each give a role its colour. */
export type TextRole = 'ink' | 'ink-2' | 'on-ink' | 'ember';
export type LineRole = 'axis' | 'tick' | 'grid' | 'curve' | 'thread' | 'limit' | 'lesser' | 'ember' | 'path' | 'path-gap' | 'hatch' | 'hatch-todo';
export type FillRole =
  | 'ink' | 'ink-2' | 'ember' | 'paper' | 'well'
  /** paper with an ink edge, ink with a paper edge, an ink edge alone */
  | 'ring' | 'disc' | 'outline'
  /** sand: where a value may lie, or what nobody is sure of; with and without an edge */
  | 'grain' | 'grain-edge'
  /** what is not there: edge broken, and what is not there and comes first */
  | 'absent' | 'todo';
export type CellRole = `cell-${Grade}` | 'cell-none';

export interface LineMark { readonly kind: 'line'; readonly role: LineRole; readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number; readonly width?: number }
/** Stroked when its role is of a line, filled otherwise. */
export interface PathMark { readonly kind: 'path'; readonly role: LineRole | FillRole; readonly d: string; readonly width?: number }
export interface RectMark { readonly kind: 'rect'; readonly role: FillRole | CellRole; readonly x: number; readonly y: number; readonly width: number; readonly height: number }
export interface CircleMark { readonly kind: 'circle'; readonly role: FillRole; readonly cx: number; readonly cy: number; readonly r: number }
export interface TextMark {
  readonly kind: 'text';
  readonly role: TextRole;
  readonly x: number;
  /** base line */
  readonly y: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly strong?: boolean;
  /** stands on lines or grain and needs a clear edge */
  readonly halo?: boolean;
}
/** A grade's shape; `on` says what it stands on: the fill of its cell, or the sheet. */
export interface GradeShapeMark { readonly kind: 'grade'; readonly grade: Grade | 'none'; readonly x: number; readonly y: number; readonly size: number; readonly on: 'cell' | 'sheet' }

export type Mark = LineMark | PathMark | RectMark | CircleMark | TextMark | GradeShapeMark;

/** A chart as marks in the order they are drawn. */
export interface Scene {
  readonly width: number;
  readonly height: number;
  /** a sentence that tells the finding, for those who cannot see the picture */
  readonly title: string;
  readonly marks: readonly Mark[];
}
