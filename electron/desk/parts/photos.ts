import { partById } from '../../../db/queries/parts/part.ts';
import { partPhotoById, photosOfPart } from '../../../db/queries/parts/photos.ts';
import { partPhoto } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { readPhoto } from '../uploaded-photo.ts';
import { write } from '../writing.ts';

const addPhoto = os.parts.addPhoto.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { partId, caption } = input;
    const part = found(partById(store, partId), 'part');
    const picture = readPhoto(input.bytes, errors);
    const id = newId();
    store
      .insert(partPhoto)
      .values({ id, partId, caption, ...picture, by: staff.id, at })
      .run();
    note({ part: partId, number: part.number, photo: id, sha256: picture.sha256 });
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
