import { partById } from '../../../db/queries/parts/part.ts';
import { partPhotoById, photosOfPart } from '../../../db/queries/parts/photos.ts';
import { partPhoto } from '../../../db/schema/index.ts';
import { LARGEST_PHOTO } from '../../../shared/contract/bench/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { readUpload } from '../uploaded-file.ts';
import { write } from '../writing.ts';

const addPhoto = os.parts.addPhoto.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { partId, caption } = input;
    const part = found(partById(store, partId), 'part');
    const upload = readUpload(input.bytes);
    if (upload === null) throw errors.NOT_A_PHOTO();
    const { bytes, sha256, kind } = upload;
    if (bytes.length > LARGEST_PHOTO) throw errors.PHOTO_TOO_LARGE();
    if (kind === null || kind === 'application/pdf') throw errors.NOT_A_PHOTO();
    const id = newId();
    store
      .insert(partPhoto)
      .values({ id, partId, caption, mediaType: kind, bytes, sha256, by: staff.id, at })
      .run();
    note({ part: partId, number: part.number, photo: id, sha256 });
    return found(
      photosOfPart(store, partId).find((card) => card.id === id),
      'photo',
    );
  }),
);

const photo = os.parts.photo.handler(({ input: { id }, context }) => {
  const { bytes, ...card } = found(partPhotoById(context.store.read, id), 'photo');
  return { ...card, bytes: bytes.toString('base64') };
});

export const partPhotos = { addPhoto, photo };
