import { bookEntry, engineModelByKey } from '../../../../db/queries/specbook/models.ts';
import { sourceList } from '../../../../db/queries/specbook/sources.ts';
import { ownSpecifications } from '../../../../db/queries/specbook/specifications.ts';
import type { ReadStore } from '../../../../db/store.ts';
import type { ModelFile } from '../../../../shared/contract/model-file.ts';
import type { EngineModel, Source, Specification } from '../../../../shared/contract/specbook.ts';
import type {
  FileIssue,
  ImportedSpecification,
  ImportPreview,
  ModelFileForm,
} from '../../../../shared/contract/specbook-exchange.ts';
import { questionedTorque, readFastener } from '../../../../shared/work/bench/torque-check.ts';
import { changesBetween } from '../../../../shared/work/specbook/revision-changes.ts';
import {
  readBand,
  type SpecificationBand,
} from '../../../../shared/work/specbook/specification-band.ts';
import { modelKeyOf } from '../models.ts';
import type { FileReading } from './file-reading.ts';
import { readCsv } from './read-csv.ts';
import { readJson } from './read-json.ts';

type FileSource = ModelFile['sources'][number];
type FileSpecification = ModelFile['specifications'][number];

/** One specification of the file, held against the book. */
export interface PlannedSpecification {
  facts: FileSpecification;
  band: SpecificationBand;
  source: FileSource;
  former: Specification | null;
  shown: ImportedSpecification;
}

/** What an import would do, and everything that doing it takes. */
export interface ImportPlan {
  file: ModelFile;
  known: EngineModel | null;
  family: EngineModel | null;
  /** The book's source for each key of the file; null for one that it hasn't got. */
  sources: Map<string, Source | null>;
  specifications: PlannedSpecification[];
  preview: ImportPreview;
}

const readFile = (text: string, form: ModelFileForm): FileReading =>
  form === 'json' ? readJson(text) : readCsv(text);

/** Holds a file against the book. Nothing is written and nothing thrown: what is wrong is in `issues`. */
export function planImport(
  store: ReadStore,
  text: string,
  form: ModelFileForm,
): { preview: ImportPreview; plan: ImportPlan | null } {
  const reading = readFile(text, form);
  if (!reading.ok)
    return {
      preview: { model: null, newSources: [], specifications: [], issues: reading.issues },
      plan: null,
    };
  const plan = planOf(store, reading);
  return { preview: plan.preview, plan: plan.preview.issues.length === 0 ? plan : null };
}

const entryByName = (store: ReadStore, named: { make: string; model: string }) => {
  const row = engineModelByKey(store, modelKeyOf(named));
  return row === undefined ? null : (bookEntry(store, row.id)?.model ?? null);
};

const isSource = (a: FileSource, b: Source): boolean =>
  a.kind === b.kind && a.title === b.title && a.edition === b.edition && a.date === b.date;

function planOf(
  store: ReadStore,
  { file, lineOf }: Extract<FileReading, { ok: true }>,
): ImportPlan {
  const known = entryByName(store, file.model);
  const family = file.model.variantOf === null ? null : entryByName(store, file.model.variantOf);
  const inBook = sourceList(store);
  const sources = new Map(
    file.sources.map((each) => [each.key, inBook.find((source) => isSource(each, source)) ?? null]),
  );
  const standing = known === null ? [] : ownSpecifications(store, known.id);
  const issues: FileIssue[] = [
    ...modelIssues(file, known, family),
    ...twiceIn(file.sources.map(({ key }) => key)).map((index) => ({
      line: null,
      path: `sources.${index}.key`,
      message: 'Another source of this file has this key.',
    })),
    ...twiceIn(file.specifications.map(({ feature }) => feature)).map((index) => ({
      line: lineOf(index),
      path: `specifications.${index}.feature`,
      message: 'This file states this feature twice.',
    })),
  ];
  const specifications = file.specifications.flatMap((facts, index): PlannedSpecification[] => {
    const at = (path: string, message: string) => {
      issues.push({ line: lineOf(index), path: `specifications.${index}.${path}`, message });
    };
    const band = readBand(facts.feature, facts);
    const fastener = readFastener(facts.feature, facts.fastener);
    const source = file.sources.find(({ key }) => key === facts.source);
    for (const part of [band, fastener])
      if (!part.ok) for (const { path, message } of part.issues) at(path, message);
    if (source === undefined) at('source', 'No source of this file has this key.');
    if (!band.ok || !fastener.ok || source === undefined) return [];
    const former = standing.find(({ feature }) => feature === facts.feature) ?? null;
    return [
      {
        facts,
        band: band.band,
        source,
        former,
        shown: shownOf(
          facts,
          source,
          sources.get(source.key) ?? null,
          former,
          band.band,
          lineOf(index),
        ),
      },
    ];
  });
  const used = new Set(file.specifications.map(({ source }) => source));
  return {
    file,
    known,
    family,
    sources,
    specifications,
    preview: {
      model: {
        make: file.model.make,
        model: file.model.model,
        isNew: known === null,
        differs: differencesOf(store, file, known),
      },
      newSources: file.sources
        .filter(({ key }) => used.has(key) && sources.get(key) === null)
        .map(({ title }) => title),
      specifications: specifications.map(({ shown }) => shown),
      issues,
    },
  };
}

function shownOf(
  facts: FileSpecification,
  source: FileSource,
  sourceInBook: Source | null,
  former: Specification | null,
  band: SpecificationBand,
  line: number | null,
): ImportedSpecification {
  const changes =
    former === null
      ? []
      : changesBetween(former, { ...facts, source: { id: sourceInBook?.id ?? '' } });
  const { low, high, unit } = facts;
  return {
    line,
    feature: facts.feature,
    change: former === null ? 'new' : changes.length === 0 ? 'unchanged' : 'revised',
    inFile: { low, high, unit },
    inBook: former && { low: former.low, high: former.high, unit: former.unit },
    changes,
    source: source.title,
    questioned:
      former !== null && changes.length === 0 ? null : questionedTorque(band, facts.fastener),
  };
}

/** The places of what stands in a list for the second time. */
const twiceIn = (list: readonly string[]): number[] =>
  list.flatMap((each, index) => (list.indexOf(each) < index ? [index] : []));

function modelIssues(
  { model }: ModelFile,
  known: EngineModel | null,
  family: EngineModel | null,
): FileIssue[] {
  const at = (path: string, message: string): FileIssue => ({
    line: null,
    path: `model.${path}`,
    message,
  });
  const issues: FileIssue[] = [];
  if (model.variantOf !== null) {
    const name = `${model.variantOf.make} ${model.variantOf.model}`;
    if (family === null)
      issues.push(
        at('variantOf', `Its family, ${name}, isn’t in the book. Import that one first.`),
      );
    else if (family.variantOf !== null)
      issues.push(at('variantOf', `${name} is a variant itself in this book: name its family.`));
    else if (family.cycle !== model.cycle)
      issues.push(at('cycle', 'A variant has the cycle of its family.'));
  }
  if (known !== null) {
    if (known.cycle !== model.cycle)
      issues.push(at('cycle', 'The book has this engine with another cycle.'));
    if (known.cylinders !== model.cylinders)
      issues.push(at('cylinders', 'The book has this engine with another number of cylinders.'));
    if ((known.variantOf?.id ?? null) !== (family?.id ?? null))
      issues.push(at('variantOf', 'The book has this engine under another family, or under none.'));
  }
  return issues;
}

/** In what the file describes the engine otherwise than the book, which keeps what it has. */
function differencesOf(
  store: ReadStore,
  { model }: ModelFile,
  known: EngineModel | null,
): ('bore' | 'stroke' | 'note')[] {
  const row = known === null ? undefined : engineModelByKey(store, modelKeyOf(known));
  if (row === undefined) return [];
  return (['bore', 'stroke', 'note'] as const).filter((field) => row[field] !== model[field]);
}
