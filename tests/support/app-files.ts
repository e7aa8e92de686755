import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';

const APP = path.join(process.cwd(), 'app');

interface AppFile {
  /** below app/, with slashes */
  readonly file: string;
  readonly source: string;
}

function appFiles(): readonly AppFile[] {
  return readdirSync(APP, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .sort()
    .map((file) => ({ file: file.split(path.sep).join('/'), source: readFileSync(path.join(APP, file), 'utf8') }));
}

/** Every file Next answers an address with. */
export function routeFiles(): readonly AppFile[] {
  return appFiles().filter(({ file }) => /(^|\/)(page\.tsx?|route\.ts)$/.test(file));
}

interface ServerFunction {
  /** file and name */
  readonly id: string;
  /** its own text */
  readonly source: string;
}

/** Every function Next lets a browser call: what the files with 'use server' export. One inside of a component fails. */
export function serverFunctions(): readonly ServerFunction[] {
  return appFiles().filter(({ source }) => source.includes('use server')).flatMap(functionsOf);
}

function functionsOf({ file, source }: AppFile): readonly ServerFunction[] {
  if (!/^['"]use server['"];/.test(source)) throw new Error(`${file}: 'use server' stands at the head of a file, where it can be seen`);
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  return tree.statements.filter(isExported).flatMap((statement) => namesOf(statement).map((name) => ({ id: `${file} ${name}`, source: statement.getText() })));
}

function isExported(statement: ts.Statement): boolean {
  return ts.isExportDeclaration(statement) || (ts.canHaveModifiers(statement) && (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword));
}

function namesOf(statement: ts.Statement): readonly string[] {
  if (ts.isVariableStatement(statement)) return statement.declarationList.declarations.map(({ name }) => name.getText());
  if (ts.isFunctionDeclaration(statement) && statement.name) return [statement.name.text];
  throw new Error(`An action is exported as a constant or a function: ${statement.getText().slice(0, 80)}`);
}
