import { CsvError, parse } from 'csv-parse/sync';
import { z } from 'zod';
import {
  CSV_COLUMNS,
  type CsvColumn,
  MODEL_FILE_FORMAT,
  MODEL_FILE_VERSION,
  ModelFile,
} from '../../../../shared/contract/model-file.ts';
import type { FileIssue } from '../../../../shared/contract/specbook-exchange.ts';
import { unguarded } from '../../csv-cells.ts';

import { type FileReading, faulty } from './file-reading.ts';

/** What stands in a column of a line; empty where the file hasn't got it. */
type Cells = (column: CsvColumn) => string;

interface Line {
  line: number;
  cells: Cells;
}

const COLUMNS: readonly CsvColumn[] = CSV_COLUMNS.map(({ name }) => name);
const under = (part: string): CsvColumn[] =>
  CSV_COLUMNS.filter(({ path }) => path.startsWith(part)).map(({ name }) => name);
const MODEL_COLUMNS = under('model.');
const FASTENER_COLUMNS = under('fastener.');
const NEEDED: readonly CsvColumn[] = ['make', 'model', 'cycle', 'cylinders', 'feature'];
const Records = z.array(
  z.object({ record: z.record(z.string(), z.string()), info: z.object({ lines: z.int() }) }),
);

/** Reads the flat form. Nothing is thrown for what is wrong in the text: it comes back by line. */
export function readCsv(text: string): FileReading {
  const lines = linesOf(text);
  if ('ok' in lines) return lines;
  const first = lines[0];
  if (first === undefined) return faulty(1, '', 'This file has a heading and no lines.');
  const others = lines.flatMap((each) => strayIn(each, first));
  if (others.length > 0) return { ok: false, issues: others };

  const specified = lines.filter(({ cells }) => cells('feature') !== '');
  const keys = new Map<string, string>();
  for (const { cells } of specified) {
    const named = sourceName(cells);
    if (!keys.has(named)) keys.set(named, `source-${keys.size + 1}`);
  }
  const firstOf = [...keys.keys()].map((named) =>
    specified.find(({ cells }) => sourceName(cells) === named),
  );
  const content = {
    format: MODEL_FILE_FORMAT,
    version: MODEL_FILE_VERSION,
    model: modelOf(first.cells),
    sources: firstOf.flatMap((each) =>
      each === undefined
        ? []
        : [
            {
              key: keys.get(sourceName(each.cells)),
              kind: each.cells('source_kind'),
              title: each.cells('source_title'),
              edition: each.cells('source_edition'),
              date: each.cells('source_date') || null,
            },
          ],
    ),
    specifications: specified.map(({ cells }) =>
      specificationOf(cells, keys.get(sourceName(cells))),
    ),
  };
  const parsed = ModelFile.safeParse(content);
  if (parsed.success)
    return { ok: true, file: parsed.data, lineOf: (index) => specified[index]?.line ?? null };
  return {
    ok: false,
    issues: parsed.error.issues.map(({ path, message }): FileIssue => {
      const [part, index, ...rest] = path.map(String);
      const at = part === 'sources' ? firstOf : specified;
      return part === 'model'
        ? { line: first.line, path: columnAt(['model', index, ...rest]), message }
        : {
            line: at[Number(index)]?.line ?? null,
            path: columnAt(part === 'sources' ? ['source', ...rest] : rest),
            message,
          };
    }),
  };
}

/** The lines of the file, or what is wrong with them as lines. */
function linesOf(text: string): Line[] | Extract<FileReading, { ok: false }> {
  const heading = /^\uFEFF?[^\r\n]*/.exec(text)?.[0] ?? '';
  const delimiter = [',', ';', '\t'].find((each) => heading.includes(each)) ?? ',';
  try {
    let columns: string[] = [];
    const records = Records.parse(
      parse(text, {
        bom: true,
        columns: (names: string[]) => {
          columns = names.map((name) => name.trim().toLowerCase());
          return columns;
        },
        delimiter,
        info: true,
        relax_quotes: false,
        skip_empty_lines: true,
        skip_records_with_empty_values: true,
      }),
    );
    const issues = headingIssues(columns);
    if (issues.length > 0) return { ok: false, issues };
    return records.map(({ record, info }) => ({
      line: info.lines,
      cells: (column) => unguarded((record[column] ?? '').trim()),
    }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error.lines === 'number' ? error.lines : null;
    return {
      ok: false,
      issues: [{ line, path: '', message: CSV_FAULTS[error.code] ?? 'This line can’t be read.' }],
    };
  }
}

const CSV_FAULTS: Record<string, string> = {
  CSV_RECORD_INCONSISTENT_COLUMNS: 'This line has more or fewer fields than the heading.',
  CSV_RECORD_INCONSISTENT_FIELDS_LENGTH: 'This line has more or fewer fields than the heading.',
  CSV_QUOTE_NOT_CLOSED: 'A quotation mark is opened and never closed.',
  CSV_INVALID_CLOSING_QUOTE: 'After the closing quotation mark the next field has to begin.',
  INVALID_OPENING_QUOTE: 'A field with a quotation mark in it has to begin with one.',
};

function headingIssues(columns: readonly string[]): FileIssue[] {
  const at = (path: string, message: string): FileIssue => ({ line: 1, path, message });
  return [
    ...NEEDED.filter((column) => !columns.includes(column)).map((column) =>
      at(column, `The heading has no column ${column}.`),
    ),
    ...columns
      .filter((column) => !COLUMNS.some((known) => known === column))
      .map((column) => at(column, 'There is no column of this name here.')),
    ...columns
      .filter((column, index) => columns.indexOf(column) !== index)
      .map((column) => at(column, 'This column stands in the heading twice.')),
  ];
}

/** A line that speaks of another model than the first one. */
const strayIn = ({ line, cells }: Line, first: Line): FileIssue[] =>
  MODEL_COLUMNS.filter(
    (column) => cells(column) !== '' && cells(column) !== first.cells(column),
  ).map((path) => ({
    line,
    path,
    message: 'A file holds one engine model: this line says something else of it than the first.',
  }));

const sourceName = (cells: Cells): string =>
  JSON.stringify([
    cells('source_kind'),
    cells('source_title'),
    cells('source_edition'),
    cells('source_date'),
  ]);

/** A decimal, with a point or a comma; what isn't one is left for the schema to name. */
const figure = (cell: string): number | string =>
  /^-?\d+([.,]\d+)?$/.test(cell) ? Number(cell.replace(',', '.')) : cell;

const maybeFigure = (cell: string): number | string | null => (cell === '' ? null : figure(cell));

const modelOf = (cells: Cells) => ({
  make: cells('make'),
  model: cells('model'),
  cycle: cells('cycle'),
  cylinders: figure(cells('cylinders')),
  bore: maybeFigure(cells('bore_mm')),
  stroke: maybeFigure(cells('stroke_mm')),
  note: cells('note'),
  variantOf:
    cells('variant_of_make') === '' && cells('variant_of_model') === ''
      ? null
      : { make: cells('variant_of_make'), model: cells('variant_of_model') },
});

const specificationOf = (cells: Cells, source: string | undefined) => ({
  feature: cells('feature'),
  low: cells('low'),
  high: cells('high'),
  aim: cells('aim'),
  wearLimit: cells('wear_limit'),
  unit: cells('unit'),
  condition: cells('condition'),
  source,
  page: cells('page'),
  fastener: FASTENER_COLUMNS.every((column) => cells(column) === '')
    ? null
    : {
        designation: cells('thread'),
        diameter: figure(cells('thread_diameter_mm')),
        pitch: figure(cells('thread_pitch_mm')),
        propertyClass: cells('property_class'),
        count: figure(cells('bolt_count')),
        pattern: cells('pattern'),
        stages: cells('stages').split(/\s+/).filter(Boolean).map(figure),
      },
});

/** The column of a path in the JSON: `fastener.stages.1` stands under `stages`. */
function columnAt(steps: readonly (string | undefined)[]): string {
  const wanted = steps.filter((step) => step !== undefined).join('.');
  return (
    CSV_COLUMNS.find(({ path }) => wanted === path || wanted.startsWith(`${path}.`))?.name ?? wanted
  );
}
