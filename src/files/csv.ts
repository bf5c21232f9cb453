/**
 * Rows as CSV after RFC 4180: commas, CRLF after each row, quotes round what holds a comma, a quote or a line end. It
 * begins with a byte order mark, without which spreadsheets take UTF-8 for something else (° for Â°).
 */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return `\ufeff${rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('')}`;
}

function cell(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
