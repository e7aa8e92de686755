import { describe, expect, it } from 'vitest';
import { fillGuidance, guidanceWords } from '@/lib/content/fill-guidance';
import { guidance2 } from '@/lib/content/guidance-2';
import type { GuidanceText } from '@/lib/content/model';

const SCHOOL = { number: '5550 100', meetingPoint: 'the north gate', secondMeetingPoint: 'the bus stop', siteAddress: 'Tern Lane 4, gate 2, gym', officerPhone: '5550 123' };
const smoke = guidance2.texts[0]!;
const lines = (text: GuidanceText, values: Parameters<typeof guidanceWords>[1]) => fillGuidance(text, guidanceWords(guidance2.fields, values)).lines.map((line) => `${line.lead} ${line.text ?? ''}`.trim());
const withLines = (...leads: string[]): GuidanceText => ({ ...smoke, lines: leads.map((lead) => ({ lead })) });

describe('a text that is filled in', () => {
  it('says what the school filled in', () => {
    const filled = fillGuidance(smoke, guidanceWords(guidance2.fields, SCHOOL));
    expect(filled.lines[3]).toEqual({ lead: 'From outside, call 5550 100.', text: 'Say: lithium batteries, smoke; Tern Lane 4, gate 2, gym; who is missing or hurt.' });
    expect(filled.lines[4]?.lead).toBe('Meet at the north gate.');
    expect(filled.notSet).toEqual([]);
    expect(filled.confirm).toBe('to be confirmed by the local fire service and first-aid trainer');
  });

  it('says what to do instead where nothing is filled in, and names what is missing once', () => {
    const filled = fillGuidance(smoke, guidanceWords(guidance2.fields, {}));
    expect(filled.lines[3]?.lead).toBe('From outside, call your local emergency number (not set here).');
    expect(filled.notSet).toEqual(['number', 'siteAddress', 'meetingPoint', 'secondMeetingPoint']);
  });

  it.each(['', '   ', '\n', '...', 'on the card by the door', '12'])('does not take %j for a number to dial', (number) => {
    expect(lines(withLines('Call {number}.'), { ...SCHOOL, number })).toEqual(['Call your local emergency number (not set here).']);
  });

  it('never leaves a hole or a brace, whatever is missing', () => {
    for (const text of guidance2.texts) {
      for (const line of [...lines(text, {}), ...lines(text, SCHOOL)]) expect(line).not.toMatch(/[{}]|undefined|\s{2}|\(\)|\s[.,;:]|\.\.|: *\.|^\W*$/);
    }
  });

  it('begins a sentence with a capital, and ends it with one full stop', () => {
    expect(lines(withLines('{meetingPoint}.', 'Go to {meetingPoint}.'), { meetingPoint: 'at the  north\ngate.' })).toEqual(['At the north gate.', 'Go to at the north gate.']);
  });

  it('takes what a school writes as words, not as a pattern', () => {
    expect(lines(withLines('Meet at {meetingPoint}.'), { meetingPoint: '$& {number} <b>' })).toEqual(['Meet at $& {number} <b>.']);
  });

  it('throws at a field it does not know, and at fields that are incomplete', () => {
    const words = guidanceWords(guidance2.fields, SCHOOL);
    expect(() => fillGuidance(withLines('Call {toString}.'), words)).toThrow('unknown field {toString}');
    expect(() => guidanceWords(guidance2.fields.slice(1), SCHOOL)).toThrow('no field number');
  });
});
