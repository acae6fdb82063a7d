import {
  MODEL_FILE_FORMAT,
  MODEL_FILE_VERSION,
  ModelFile,
} from '../../../../shared/contract/model-file.ts';
import { type FileReading, faulty } from './file-reading.ts';

/** Reads the JSON form. Nothing is thrown for what is wrong in the text: it comes back by path. */
export function readJson(text: string): FileReading {
  let content: unknown;
  try {
    content = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return faulty(
      lineOfError(error, text),
      '',
      'This isn’t JSON: the text breaks off or is garbled.',
    );
  }
  const marks = content !== null && typeof content === 'object' ? content : {};
  if (!('format' in marks) || marks.format !== MODEL_FILE_FORMAT)
    return faulty(null, 'format', 'This file holds no engine model of a spec book.');
  if (!('version' in marks) || marks.version !== MODEL_FILE_VERSION)
    return faulty(
      null,
      'version',
      `This program reads version ${MODEL_FILE_VERSION} of the file. Export it there in that version.`,
    );
  const parsed = ModelFile.safeParse(content);
  return parsed.success
    ? { ok: true, file: parsed.data, lineOf: () => null }
    : {
        ok: false,
        issues: parsed.error.issues.map(({ path, message }) => ({
          line: null,
          path: path.map(String).join('.'),
          message,
        })),
      };
}

/** JSON's own error names the place in characters, when it names one. */
function lineOfError({ message }: SyntaxError, text: string): number | null {
  const position = /position (\d+)/.exec(message)?.[1];
  return position === undefined
    ? text.split('\n').length
    : text.slice(0, Number(position)).split('\n').length;
}
