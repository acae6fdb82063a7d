import { sourceFileById, sourceFilesOf } from '../../../db/queries/specbook/source-files.ts';
import { sourceById } from '../../../db/queries/specbook/sources.ts';
import { sourceFile as sourceFileTable } from '../../../db/schema/index.ts';
import { LARGEST_SOURCE_FILE } from '../../../shared/contract/specbook-files.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { readUpload } from '../uploaded-file.ts';
import { write } from '../writing.ts';

export const addSourceFile = os.specbook.addSourceFile.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { sourceId, fileName } = input;
    found(sourceById(store, sourceId), 'source');
    const upload = readUpload(input.bytes);
    if (upload === null) throw errors.NOT_A_PAGE();
    const { bytes, sha256, kind: mediaType } = upload;
    if (bytes.length > LARGEST_SOURCE_FILE) throw errors.FILE_TOO_LARGE();
    if (mediaType === null) throw errors.NOT_A_PAGE();
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
