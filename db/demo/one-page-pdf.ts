const escaped = (line: string): string => line.replaceAll(/[\\()]/g, String.raw`\$&`);

/**
 * A page of plain text as a PDF, for a file of the invented spec book: small, and the same bytes each time.
 * Letters of ISO 8859-1 only.
 */
export function onePagePdf(lines: readonly string[]): Buffer {
  const text = lines.map((line) => `(${escaped(line)}) Tj T*`).join('\n');
  const content = `BT /F1 11 Tf 16 TL 60 780 Td\n${text}\nET`;
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R /Resources << /Font << /F1 5 0 R >> >> >>',
    `<< /Length ${content.length} >>\nstream\n${content}\nendstream`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>',
  ];
  const starts: number[] = [];
  let body = '%PDF-1.4\n';
  for (const [index, object] of objects.entries()) {
    starts.push(body.length);
    body += `${index + 1} 0 obj\n${object}\nendobj\n`;
  }
  const table = starts.map((at) => `${String(at).padStart(10, '0')} 00000 n \n`).join('');
  const size = objects.length + 1;
  return Buffer.from(
    `${body}xref\n0 ${size}\n0000000000 65535 f \n${table}trailer\n<< /Size ${size} /Root 1 0 R >>\nstartxref\n${body.length}\n%%EOF\n`,
    'latin1',
  );
}
