import { z } from 'zod';
import { FEATURES } from '../work/features.ts';
import { REVISED_FIELDS } from '../work/specbook/revision-changes.ts';
import { reads, writes } from './base.ts';
import { EngineModelId, StaffId } from './ids.ts';
import { SPECIFICATION_UNITS } from './specbook-words.ts';

/** Engine models handed from shop to shop as a file: see `model-file.ts` for the format. */

export const MODEL_FILE_FORMS = ['json', 'csv'] as const;
const Form = z.enum(MODEL_FILE_FORMS);
export type ModelFileForm = z.infer<typeof Form>;

/** What is wrong in a file. The line is the text's own, counted from 1; null where none can be told. */
const FileIssue = z.object({ line: z.int().nullable(), path: z.string(), message: z.string() });
export type FileIssue = z.infer<typeof FileIssue>;

const Printed = z.object({
  low: z.string(),
  high: z.string(),
  unit: z.enum(SPECIFICATION_UNITS),
});

/** What an import would do with one specification of the file. */
const ImportedSpecification = z.object({
  line: z.int().nullable(),
  feature: z.enum(FEATURES),
  change: z.enum(['new', 'revised', 'unchanged']),
  inFile: Printed,
  /** The revision that stands in the book now. */
  inBook: Printed.nullable(),
  /** What a revision would change. */
  changes: z.array(z.enum(REVISED_FIELDS)),
  source: z.string(),
  /** A torque that doesn't suit its thread and class. */
  questioned: z
    .object({ verdict: z.enum(['low', 'high']), preloadShareOfProof: z.number() })
    .nullable(),
});
export type ImportedSpecification = z.infer<typeof ImportedSpecification>;

export const ImportPreview = z.object({
  /** Null while the file can't be read as far as that. */
  model: z
    .object({
      make: z.string(),
      model: z.string(),
      isNew: z.boolean(),
      /** Dimensions and notes in which the file differs from the book; those of the book stay. */
      differs: z.array(z.enum(['bore', 'stroke', 'note'])),
    })
    .nullable(),
  newSources: z.array(z.string()),
  specifications: z.array(ImportedSpecification),
  /** With one of them nothing can be imported. */
  issues: z.array(FileIssue),
});
export type ImportPreview = z.infer<typeof ImportPreview>;

const FileText = z.string().min(1, 'This file is empty.').max(2_000_000, 'This is too long.');

export const exchange = {
  /** An entry with what it states itself, as text to be kept as a file. */
  exportModel: reads
    .input(z.strictObject({ id: EngineModelId, format: Form }))
    .output(z.object({ fileName: z.string(), text: z.string() })),

  /** What an import would do; nothing is written. */
  previewImport: reads
    .input(z.strictObject({ text: FileText, format: Form }))
    .output(ImportPreview),

  /** Takes a file into the book, all of it or nothing. */
  importModel: writes
    .errors({
      FILE_FAULTY: {
        status: 422,
        message:
          'This file can’t be taken in as it is, and nothing of it was. Mend the lines named and try again.',
        data: z.object({ issues: z.array(FileIssue) }),
      },
      TORQUES_QUESTIONED: {
        status: 409,
        message:
          'Some torques in this file don’t suit their thread and class. Check them in the preview; keep them only if their source really says so.',
        data: z.object({ features: z.array(z.enum(FEATURES)) }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        text: FileText,
        format: Form,
        /** The sources really say so: keep torques that were questioned. */
        keepQuestioned: z.boolean().default(false),
      }),
    )
    .output(
      z.object({
        engineModelId: EngineModelId,
        added: z.int(),
        revised: z.int(),
        unchanged: z.int(),
      }),
    ),
};
