import { parseSync, Visitor } from 'vite';

/** One file's wish to read another, or a package. */
export interface Import {
  /** As written, without a query such as ?url. */
  readonly from: string;
  /** module: ordinary; types: nothing of it is left when the types are gone; url: only its address is taken. */
  readonly how: 'module' | 'types' | 'url';
}

interface Specifier {
  readonly type: string;
  readonly importKind?: string | undefined;
  readonly exportKind?: string | undefined;
}

/** Whether an import or a re-export brings in types alone. */
function typesOnly(kind: string | undefined, specifiers: readonly Specifier[]): boolean {
  if (kind === 'type') return true;
  return specifiers.length > 0 && specifiers.every((one) => (one.importKind ?? one.exportKind) === 'type');
}

/**
 * Every import of a source text: static, dynamic, re-exports, `import('…')` in types, and
 * `new URL('…', import.meta.url)`.
 *
 * @throws Error if the text does not parse, or a dynamic import does not name its file plainly
 */
export function importsOf(file: string, source: string): Import[] {
  const { program, errors } = parseSync(file, source);
  if (errors[0]) throw new Error(`${file} does not parse: ${errors[0].message}`);
  const found: Import[] = [];
  const add = (from: string, how: Import['how']) => found.push({ from: from.replace(/\?.*$/, ''), how });

  new Visitor({
    ImportDeclaration(node) {
      add(node.source.value, typesOnly(node.importKind, node.specifiers as Specifier[]) ? 'types' : 'module');
    },
    ExportNamedDeclaration(node) {
      if (node.source)
        add(node.source.value, typesOnly(node.exportKind, node.specifiers) ? 'types' : 'module');
    },
    ExportAllDeclaration(node) {
      add(node.source.value, node.exportKind === 'type' ? 'types' : 'module');
    },
    ImportExpression(node) {
      if (node.source.type !== 'Literal' || typeof node.source.value !== 'string')
        throw new Error(`${file} has an import() whose file is not written out, so nobody can check it`);
      add(node.source.value, 'module');
    },
    TSImportType(node) {
      add(node.source.value, 'types');
    },
    NewExpression(node) {
      const [address, base] = node.arguments;
      if (
        node.callee.type !== 'Identifier' ||
        node.callee.name !== 'URL' ||
        base?.type !== 'MemberExpression'
      )
        return;
      if (address?.type === 'Literal' && typeof address.value === 'string') add(address.value, 'url');
    },
  }).visit(program);
  return found;
}
