import { createHash } from 'node:crypto';
import { sourceFileById, sourceFilesOf } from '../../../db/queries/specbook/source-files.ts';
import { sourceById } from '../../../db/queries/specbook/sources.ts';
import { sourceFile as sourceFileTable } from '../../../db/schema/index.ts';
import { LARGEST_SOURCE_FILE, type SourceFile } from '../../../shared/contract/specbook-files.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

/** What kind of file it is by its first bytes: a name or a browser's word for it proves nothing. */
function kindOf(bytes: Buffer): SourceFile['mediaType'] | null {
  const beginsWith = (text: string, at = 0) =>
    bytes.subarray(at, at + text.length).equals(Buffer.from(text, 'latin1'));
  if (beginsWith('%PDF-')) return 'application/pdf';
  if (beginsWith('\xff\xd8\xff')) return 'image/jpeg';
  if (beginsWith('\x89PNG\r\n\x1a\n')) return 'image/png';
  return beginsWith('RIFF') && beginsWith('WEBP', 8) ? 'image/webp' : null;
}

export const addSourceFile = os.specbook.addSourceFile.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { sourceId, fileName } = input;
    found(sourceById(store, sourceId), 'source');
    const bytes = Buffer.from(input.bytes, 'base64');
    // Buffer skips what is no base64: half a file must not be taken for a whole one.
    if (bytes.toString('base64') !== input.bytes) throw errors.NOT_A_PAGE();
    if (bytes.length > LARGEST_SOURCE_FILE) throw errors.FILE_TOO_LARGE();
    const mediaType = kindOf(bytes);
    if (mediaType === null) throw errors.NOT_A_PAGE();
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    const twin = sourceFilesOf(store, sourceId).find((each) => each.sha256 === sha256);
    if (twin) throw errors.FILE_THERE_ALREADY({ data: { fileName: twin.fileName } });
    const id = newId();
    store
      .insert(sourceFileTable)
      .values({ id, sourceId, fileName, mediaType, bytes, sha256, by: staff.id, at })
      .run();
    note({ source: sourceId, file: id, fileName, sha256 });
    return found(
      sourceFilesOf(store, sourceId).find((each) => each.id === id),
      'file',
    );
  }),
);

export const sourceFiles = os.specbook.sourceFiles.handler(({ input: { sourceId }, context }) => {
  found(sourceById(context.store.read, sourceId), 'source');
  return sourceFilesOf(context.store.read, sourceId);
});

export const sourceFile = os.specbook.sourceFile.handler(({ input: { id }, context }) => {
  const { content, ...card } = found(sourceFileById(context.store.read, id), 'file');
  return { ...card, bytes: content.toString('base64') };
});
