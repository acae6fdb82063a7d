import {
  CSV_COLUMNS,
  type CsvColumn,
  MODEL_FILE_FORMAT,
  MODEL_FILE_VERSION,
  type ModelFile,
} from '../../../../shared/contract/model-file.ts';
import type { EngineModel, Source, Specification } from '../../../../shared/contract/specbook.ts';
import { csvText } from '../../csv-cells.ts';

/** What an entry states itself, as a file. `own` dimensions, not those that it takes from its family. */
export function modelFileOf(
  model: EngineModel,
  own: { bore: number | null; stroke: number | null },
  specifications: readonly Specification[],
): ModelFile {
  const { make, cycle, cylinders, note, variantOf } = model;
  const sources = new Map<string, Source>(specifications.map(({ source }) => [source.id, source]));
  const keys = new Map([...sources.keys()].map((id, index) => [id, `source-${index + 1}`]));
  return {
    format: MODEL_FILE_FORMAT,
    version: MODEL_FILE_VERSION,
    model: {
      make,
      model: model.model,
      cycle,
      cylinders,
      bore: own.bore,
      stroke: own.stroke,
      note,
      variantOf: variantOf === null ? null : { make: variantOf.make, model: variantOf.model },
    },
    sources: [...sources.values()].map(({ id, kind, title, edition, date }) => ({
      key: keys.get(id) ?? id,
      kind,
      title,
      edition,
      date,
    })),
    specifications: specifications.map((each) => ({
      feature: each.feature,
      low: each.low,
      high: each.high,
      aim: each.aim,
      wearLimit: each.wearLimit,
      unit: each.unit,
      condition: each.condition,
      source: keys.get(each.source.id) ?? each.source.id,
      page: each.page,
      fastener: each.fastener,
    })),
  };
}

export const jsonText = (file: ModelFile): string => `${JSON.stringify(file, null, 2)}\n`;

type Cells = Partial<Record<CsvColumn, string | number | null>>;

const COLUMNS: readonly CsvColumn[] = CSV_COLUMNS.map(({ name }) => name);

/** The same on lines: the model's own columns on each of them, so that the lines may be sorted. */
export function csvOf({ model, sources, specifications }: ModelFile): string {
  const modelCells: Cells = {
    make: model.make,
    model: model.model,
    cycle: model.cycle,
    cylinders: model.cylinders,
    bore_mm: model.bore,
    stroke_mm: model.stroke,
    note: model.note,
    variant_of_make: model.variantOf?.make,
    variant_of_model: model.variantOf?.model,
  };
  const lines = specifications.map((each): Cells => {
    const source = sources.find(({ key }) => key === each.source);
    return {
      ...modelCells,
      feature: each.feature,
      low: each.low,
      high: each.high,
      aim: each.aim,
      wear_limit: each.wearLimit,
      unit: each.unit,
      condition: each.condition,
      source_kind: source?.kind,
      source_title: source?.title,
      source_edition: source?.edition,
      source_date: source?.date,
      page: each.page,
      thread: each.fastener?.designation,
      thread_diameter_mm: each.fastener?.diameter,
      thread_pitch_mm: each.fastener?.pitch,
      property_class: each.fastener?.propertyClass,
      bolt_count: each.fastener?.count,
      pattern: each.fastener?.pattern,
      stages: each.fastener?.stages.join(' '),
    };
  });
  const body = lines.length === 0 ? [modelCells] : lines;
  const cellLines = body.map((cells) => COLUMNS.map((column) => String(cells[column] ?? '')));
  return csvText([COLUMNS, ...cellLines], true);
}
