import { createHash } from 'node:crypto';
import { photoById, photosOf } from '../../../db/queries/build.ts';
import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { photo as photoTable } from '../../../db/schema/index.ts';
import { LARGEST_PHOTO, type PhotoCard } from '../../../shared/contract/bench/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';

/** What kind of picture it is by its first bytes: a name or a browser's word for it proves nothing. */
function pictureKind(bytes: Buffer): PhotoCard['mediaType'] | null {
  if (bytes.subarray(0, 3).equals(Buffer.from([0xff, 0xd8, 0xff]))) return 'image/jpeg';
  if (bytes.subarray(0, 8).equals(Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'))) return 'image/png';
  const riff = bytes.subarray(0, 4).toString('latin1') === 'RIFF';
  if (riff && bytes.subarray(8, 12).toString('latin1') === 'WEBP') return 'image/webp';
  return null;
}

export const addPhoto = os.bench.addPhoto.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { jobId, subject, caption } = input;
    const job = found(jobRowById(store, jobId), 'job');
    if (job.state === 'handed-over') throw errors.JOB_CLOSED();
    const bytes = Buffer.from(input.bytes, 'base64');
    // Buffer skips what is no base64: half a file must not be taken for a whole one.
    if (bytes.toString('base64') !== input.bytes) throw errors.NOT_A_PHOTO();
    if (bytes.length > LARGEST_PHOTO) throw errors.PHOTO_TOO_LARGE();
    const mediaType = pictureKind(bytes);
    if (mediaType === null) throw errors.NOT_A_PHOTO();
    const id = newId();
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    store
      .insert(photoTable)
      .values({ id, jobId, subject, caption, mediaType, bytes, sha256, by: staff.id, at })
      .run();
    note({ job: jobId, photo: id, subject, sha256 });
    return found(
      photosOf(store, jobId).find((card) => card.id === id),
      'photo',
    );
  }),
);

export const photos = os.bench.photos.handler(({ input: { jobId }, context }) => {
  found(jobRowById(context.store.read, jobId), 'job');
  return photosOf(context.store.read, jobId);
});

export const photo = os.bench.photo.handler(({ input: { id }, context }) => {
  const { bytes, ...card } = found(photoById(context.store.read, id), 'photo');
  return { ...card, bytes: bytes.toString('base64') };
});
