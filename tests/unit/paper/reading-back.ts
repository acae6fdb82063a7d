import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { z } from 'zod';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

/** A stretch of text as it stands on a page; lengths in points, y from the top. */
interface Placed {
  text: string;
  page: number;
  x: number;
  y: number;
  width: number;
}

export interface ReadPaper {
  placed: Placed[];
  /** All of it, rows from top to bottom, cells from left to right, parted by a space. */
  text: string;
  pages: { width: number; height: number }[];
  info: Record<string, unknown>;
  /** Kinds of structure elements, as a screen reader meets them. */
  structure: string[];
}

/** Reads a PDF back with a library that had no part in drawing it. */
export async function readPaper(bytes: Uint8Array): Promise<ReadPaper> {
  const loading = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await loading.promise;
  const placed: Placed[] = [];
  const pages: ReadPaper['pages'] = [];
  const structure: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    pages.push({ width, height });
    const content = await page.getTextContent();
    for (const item of content.items) {
      if (!('str' in item) || item.str.trim() === '') continue;
      const [, , , , x, y] = item.transform as number[];
      placed.push({
        text: item.str,
        page: number,
        x: x ?? 0,
        y: height - (y ?? 0),
        width: item.width,
      });
    }
    rolesOf(await page.getStructTree(), structure);
  }
  const { info } = await document.getMetadata();
  await loading.destroy();
  const sorted = placed.toSorted((a, b) => a.page - b.page || a.y - b.y || a.x - b.x);
  return {
    placed: sorted,
    text: sorted.map(({ text }) => text).join(' '),
    pages,
    info: { ...info },
    structure,
  };
}

/** The files that a PDF carries beside its pages, by name. */
export async function attachedTo(bytes: Uint8Array): Promise<Map<string, Uint8Array>> {
  const loading = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await loading.promise;
  const attached: unknown = await document.getAttachments();
  await loading.destroy();
  const files = z.record(z.string(), z.object({ content: z.instanceof(Uint8Array) }));
  return new Map(
    Object.entries(files.parse(attached)).map(([name, { content }]) => [name, content] as const),
  );
}

/** Everything on the line of a page on which `text` stands. */
export function rowsWith(paper: ReadPaper, text: string): string[] {
  return paper.placed
    .filter((item) => item.text === text)
    .map(({ page, y }) =>
      paper.placed
        .filter((item) => item.page === page && Math.abs(item.y - y) < 1)
        .map((item) => item.text)
        .join(' '),
    );
}

/** What a barcode reader makes of the first page, or of another, rendered to pixels. */
export async function readBarcode(bytes: Uint8Array, dotsPerInch: number, page = 1) {
  const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
  await prepareZXingModule({
    overrides: { wasmBinary: new Uint8Array(readFileSync(wasm)).buffer },
    fireImmediately: true,
  });
  const picture = withFile(bytes, (path) =>
    execFileSync(
      'pdftoppm',
      ['-png', '-singlefile', '-f', String(page), '-r', String(dotsPerInch), path],
      { maxBuffer: 1 << 26 },
    ),
  );
  const found = await readBarcodes(new Uint8Array(picture));
  return found.map(({ format, text }) => ({ format, text }));
}

/** What qpdf has to say against a PDF; empty when there is nothing. */
export function faultsOf(bytes: Uint8Array): string {
  const report = withFile(bytes, (path) => execFileSync('qpdf', ['--check', path]).toString());
  return report.includes('No syntax or stream encoding errors found') ? '' : report;
}

function withFile<T>(bytes: Uint8Array, use: (path: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'tappet-paper-'));
  try {
    const path = join(folder, 'paper.pdf');
    writeFileSync(path, bytes);
    return use(path);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function rolesOf(node: unknown, roles: string[]) {
  if (typeof node !== 'object' || node === null) return;
  if ('role' in node && typeof node.role === 'string') roles.push(node.role);
  if ('children' in node && Array.isArray(node.children)) {
    for (const child of node.children) rolesOf(child, roles);
  }
}
