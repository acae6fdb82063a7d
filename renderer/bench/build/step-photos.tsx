import { Button, Text } from '@mantine/core';
import { IconCamera, IconPhoto } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { LARGEST_PHOTO, type PhotoCard } from '../../../shared/contract/bench/index.ts';
import type { JobId } from '../../../shared/contract/ids.ts';
import { deskQuery } from '../../common/desk.ts';
import { base64Of } from '../../common/file-bytes.ts';
import { Photo } from '../../common/photo.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from './build.module.css';

const NONE: readonly PhotoCard[] = [];

/** The photos of one subject of a job; with `add`, the ways to take another. */
export function StepPhotos({
  jobId,
  subject,
  add = false,
  onCount,
}: {
  readonly jobId: JobId;
  readonly subject: string;
  readonly add?: boolean;
  readonly onCount?: (count: number) => void;
}) {
  const query = useQuery(deskQuery.bench.photos.queryOptions({ input: { jobId } }));
  const photos = (query.data ?? NONE).filter((card) => card.subject === subject);
  const count = photos.length;
  useEffect(() => onCount?.(count), [onCount, count]);
  return (
    <div className={classes.page}>
      {query.isError && <RefusalAlert error={query.error} />}
      {count > 0 && (
        <ul className={classes.photos} aria-label="Photos">
          {photos.map((card) => (
            <li key={card.id}>
              <Picture card={card} />
            </li>
          ))}
        </ul>
      )}
      {add && <AddPhoto jobId={jobId} subject={subject} />}
    </div>
  );
}

function Picture({ card }: { readonly card: PhotoCard }) {
  const query = useQuery({
    ...deskQuery.bench.photo.queryOptions({ input: { id: card.id } }),
    // A photo never changes.
    staleTime: Number.POSITIVE_INFINITY,
  });
  return <Photo card={card} query={query} size="sm" />;
}

function AddPhoto({ jobId, subject }: { readonly jobId: JobId; readonly subject: string }) {
  const by = useBy();
  const camera = useRef<HTMLInputElement>(null);
  const chooser = useRef<HTMLInputElement>(null);
  const write = useWrite(deskQuery.bench.addPhoto.mutationOptions());
  const [trouble, setTrouble] = useState('');
  const take = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file === undefined) return;
    write.reset();
    if (file.size > LARGEST_PHOTO) {
      setTrouble('A photo here is 8 MB at most. Take it at a smaller size and add that one.');
    } else {
      setTrouble('');
      write.mutate({ by, jobId, subject, bytes: await base64Of(file) });
    }
    // The same file can be chosen again.
    input.value = '';
  };
  const accept = 'image/jpeg,image/png,image/webp';
  return (
    <>
      <div className={classes.actions}>
        <Button
          variant="light"
          size="lg"
          className={classes.big}
          loading={write.isPending}
          leftSection={<IconCamera size={24} aria-hidden />}
          onClick={() => camera.current?.click()}
        >
          Take a photo
        </Button>
        <Button
          variant="default"
          size="lg"
          className={classes.big}
          disabled={write.isPending}
          leftSection={<IconPhoto size={24} aria-hidden />}
          onClick={() => chooser.current?.click()}
        >
          Choose a file
        </Button>
      </div>
      <input
        ref={camera}
        type="file"
        accept={accept}
        capture="environment"
        hidden
        aria-label="Photo from the camera"
        onChange={(event) => take(event.currentTarget)}
      />
      <input
        ref={chooser}
        type="file"
        accept={accept}
        hidden
        aria-label="Photo from a file"
        onChange={(event) => take(event.currentTarget)}
      />
      {trouble !== '' && (
        <Text role="alert" fw={600} c="red">
          {trouble}
        </Text>
      )}
      {write.isError && <RefusalAlert error={write.error} />}
    </>
  );
}
