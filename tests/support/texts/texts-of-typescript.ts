import ts from 'typescript';

/** What stands for a value that is only known when the program runs. */
const VALUE = '…';

/**
 * Every string, template and piece of JSX of a source file. The words of one element are one text, with its
 * inner elements, so that "Do <b>not</b> carry it" is read as a person reads it. Values are shown as "…".
 */
export function textsOfTypeScript(file: string, source: string): readonly string[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true, file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS);
  const found: string[] = [];
  const visit = (node: ts.Node, insideText: boolean): void => {
    let inside = insideText;
    if (ts.isStringLiteralLike(node) || ts.isTemplateExpression(node)) found.push(wordsOf(node));
    if (isElement(node) && !insideText && holdsWords(node)) {
      found.push(node.children.map(wordsOf).join(''));
      inside = true;
    }
    // A value inside of a text may be a text of its own: a choice between two sentences.
    ts.forEachChild(node, (child) => visit(child, ts.isJsxExpression(node) ? false : inside));
  };
  visit(tree, false);
  return found.map((text) => text.replace(/\s+/g, ' ').trim()).filter((text) => text.includes(' '));
}

type Element = ts.JsxElement | ts.JsxFragment;
function isElement(node: ts.Node): node is Element { return ts.isJsxElement(node) || ts.isJsxFragment(node); }
function holdsWords(node: Element): boolean { return node.children.some((child) => ts.isJsxText(child) && child.text.trim() !== ''); }

function wordsOf(node: ts.Node): string {
  if (ts.isJsxText(node)) return node.text;
  if (ts.isStringLiteralLike(node)) return node.text;
  if (ts.isTemplateExpression(node)) return node.head.text + node.templateSpans.map((span) => VALUE + span.literal.text).join('');
  if (ts.isJsxExpression(node)) return node.expression !== undefined && ts.isStringLiteralLike(node.expression) ? node.expression.text : VALUE;
  return isElement(node) ? node.children.map(wordsOf).join('') : ' ';
}
