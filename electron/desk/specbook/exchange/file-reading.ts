import type { ModelFile } from '../../../../shared/contract/model-file.ts';
import type { FileIssue } from '../../../../shared/contract/specbook-exchange.ts';

/** A file as far as it could be read: the model, and on which line of the text each specification stands. */
export type FileReading =
  | { ok: true; file: ModelFile; lineOf: (specification: number) => number | null }
  | { ok: false; issues: FileIssue[] };

export const faulty = (line: number | null, path: string, message: string): FileReading => ({
  ok: false,
  issues: [{ line, path, message }],
});
