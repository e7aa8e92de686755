const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ' };

/** The words of an HTML or SVG document, block by block; scripts and styles are not for people. */
export function textsOfMarkup(source: string): readonly string[] {
  const shown = source.replace(/<(script|style)\b[\s\S]*?<\/\1>/gi, '').replace(/<!--[\s\S]*?-->/g, '');
  const attributes = [...shown.matchAll(/\b(?:alt|title|aria-label|content|placeholder)="([^"]*)"/g)].map(([, text]) => text ?? '');
  const blocks = shown.split(/<\/?(?:p|li|h\d|td|th|div|section|title|text|desc|tr|ul|ol|body|head)\b[^>]*>/i);
  return [...attributes, ...blocks.map((block) => block.replace(/<[^>]*>/g, ''))].map(decoded).filter((text) => text !== '');
}

/** The words of a Markdown page, paragraph by paragraph, without code blocks. */
export function textsOfMarkdown(source: string): readonly string[] {
  const prose = source.replace(/^```[\s\S]*?^```/gm, '');
  return prose.split(/\n\s*\n|\n(?=\s*(?:[-*#|]|\d+\.)\s*)/).map((block) => block.replace(/[*_`#|]/g, ' ').replace(/\s+/g, ' ').trim()).filter((text) => text !== '');
}

function decoded(text: string): string {
  return text.replace(/&(\w+);/g, (whole, name: string) => ENTITIES[name] ?? whole).replace(/\s+/g, ' ').trim();
}
