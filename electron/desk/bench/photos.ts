import { photoById, photosOf } from '../../../db/queries/build.ts';
import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { photo as photoTable } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { readPhoto } from '../uploaded-photo.ts';
import { write } from '../writing.ts';

export const addPhoto = os.bench.addPhoto.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { jobId, subject, caption } = input;
    const job = found(jobRowById(store, jobId), 'job');
    if (job.state === 'handed-over') throw errors.JOB_CLOSED();
    const picture = readPhoto(input.bytes, errors);
    const id = newId();
    store
      .insert(photoTable)
      .values({ id, jobId, subject, caption, ...picture, by: staff.id, at })
      .run();
    note({ job: jobId, photo: id, subject, sha256: picture.sha256 });
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
