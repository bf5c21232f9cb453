/** One piece of JSON (RFC 8259), with the white space before it. */
const PIECE =
  /[ \t\n\r]*(?:([{}[\],:])|("(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|(?:true|false|null)(?!\w)))/y;

type Wanted = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | 'more' | 'nothing';

/**
 * Where characters stop being JSON: the line and column (from 1) of the first piece that can't stand there. For a
 * person: engines word their own messages differently and often leave the place out. Undefined when it is JSON.
 */
export function whereJsonBreaks(characters: string): { line: number; column: number } | undefined {
  const open: ('{' | '[')[] = [];
  let wanted: Wanted = 'value';
  let end = 0;
  for (;;) {
    PIECE.lastIndex = end;
    const found = PIECE.exec(characters);
    const start = end + (/^[ \t\n\r]*/.exec(characters.slice(end))?.[0].length ?? 0);
    if (!found)
      return wanted === 'nothing' && start === characters.length ? undefined : at(characters, start);
    const next = after(wanted, found[1] ?? (found[2] === undefined ? 'plain' : 'text'), open);
    if (!next) return at(characters, start);
    wanted = next;
    end = PIECE.lastIndex;
  }
}

/** What may follow a piece, or undefined when the piece can't stand there. Keeps the list of open brackets. */
function after(wanted: Wanted, piece: string, open: ('{' | '[')[]): Wanted | undefined {
  const closed = (): Wanted => (open.length === 0 ? 'nothing' : 'more');
  const shut = (bracket: '{' | '[') =>
    open[open.length - 1] === bracket ? open.pop() && closed() : undefined;
  if (wanted === 'value' || wanted === 'value or ]') {
    if (piece === '{' || piece === '[') {
      open.push(piece);
      return piece === '{' ? 'key or }' : 'value or ]';
    }
    if (piece === ']' && wanted === 'value or ]') return shut('[');
    return piece === 'text' || piece === 'plain' ? closed() : undefined;
  }
  if (wanted === 'key' || wanted === 'key or }') {
    if (piece === '}' && wanted === 'key or }') return shut('{');
    return piece === 'text' ? ':' : undefined;
  }
  if (wanted === ':') return piece === ':' ? 'value' : undefined;
  if (wanted === 'nothing') return undefined;
  if (piece === ',') return open[open.length - 1] === '{' ? 'key' : 'value';
  if (piece === '}') return shut('{');
  return piece === ']' ? shut('[') : undefined;
}

function at(characters: string, place: number): { line: number; column: number } {
  const before = characters.slice(0, place).split('\n');
  return { line: before.length, column: (before[before.length - 1] ?? '').length + 1 };
}
