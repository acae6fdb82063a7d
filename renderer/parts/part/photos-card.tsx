import { Button, SimpleGrid, Stack, Text } from '@mantine/core';
import { IconPhoto } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useRef } from 'react';
import type { PartDossier, PartPhotoCard } from '../../../shared/contract/parts/index.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { base64Of } from '../../common/file-bytes.ts';
import { Photo } from '../../common/photo.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from '../part-page.module.css';

/** Photos of the part: which way round it goes, what the old one looked like. */
export function PhotosCard({ dossier: { part, photos } }: { dossier: PartDossier }) {
  const by = useBy();
  const chooser = useRef<HTMLInputElement>(null);
  const add = useWrite(deskQuery.parts.addPhoto.mutationOptions());
  const take = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file === undefined) return;
    add.mutate({ by, partId: part.id, bytes: await base64Of(file) });
    // The same file can be chosen again.
    input.value = '';
  };
  return (
    <Card
      title="Photos"
      aside={
        <Button
          size="sm"
          variant="default"
          loading={add.isPending}
          leftSection={<IconPhoto size={18} aria-hidden />}
          onClick={() => chooser.current?.click()}
        >
          Add a photo
        </Button>
      }
    >
      <Stack gap="sm">
        {photos.length === 0 ? (
          <Text size="sm" c="dimmed">
            A photo says which way round it goes, and what to hold the old one against.
          </Text>
        ) : (
          <SimpleGrid cols={{ base: 2, xs: 3 }} spacing="sm">
            {photos.map((card) => (
              <Picture key={card.id} card={card} />
            ))}
          </SimpleGrid>
        )}
        <input
          ref={chooser}
          type="file"
          accept="image/jpeg,image/png,image/webp"
          hidden
          aria-label="Photo of the part"
          onChange={(event) => take(event.currentTarget)}
        />
        <RefusalAlert error={add.error} />
      </Stack>
    </Card>
  );
}

function Picture({ card }: { card: PartPhotoCard }) {
  const query = useQuery({
    ...deskQuery.parts.photo.queryOptions({ input: { id: card.id } }),
    // A photo never changes.
    staleTime: Number.POSITIVE_INFINITY,
  });
  return <Photo card={card} query={query} size="xs" className={classes.photo} />;
}
