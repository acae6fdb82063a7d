import { Alert, Button, Group, Loader, Stack, Text } from '@mantine/core';
import { IconTableImport } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useNavigate } from 'react-router';
import type { SupplierId } from '../../../shared/contract/ids.ts';
import type { PriceFileSketch } from '../../../shared/contract/parts/index.ts';
import { Card } from '../../common/card.tsx';
import { desk, deskQuery } from '../../common/desk.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import { draftFrom, type MappingDraft, mappingOf, withField } from './mapping-draft.ts';
import type { ChosenFile } from './new-price-file-page.tsx';
import { ReadingForm, type SeenAs } from './reading-form.tsx';
import { SampleTable } from './sample-table.tsx';

interface FileMappingProps {
  supplierId: SupplierId;
  file: ChosenFile;
}

/** What a file looks like, and how it is to be read. */
export function FileMapping({ supplierId, file }: FileMappingProps) {
  const [seenAs, setSeenAs] = useState<SeenAs>({});
  const sketch = useQuery({
    // The bytes are left out: they are megabytes, and the serial tells the file.
    queryKey: ['price file looked at', supplierId, file.serial, seenAs],
    queryFn: () =>
      desk.parts.sketchPriceFile({
        supplierId,
        fileName: file.name,
        bytes: file.bytes,
        as: seenAs,
      }),
    placeholderData: keepPreviousData,
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: 0,
  });
  if (sketch.error !== null) return <RefusalAlert error={sketch.error} />;
  if (sketch.data === undefined)
    return (
      <Group role="status">
        <Loader size="sm" />
        <Text>Looking at the file. A large workbook takes some seconds.</Text>
      </Group>
    );
  return (
    <Mapping
      key={JSON.stringify([sketch.data.headings, sketch.data.columns])}
      supplierId={supplierId}
      file={file}
      sketch={sketch.data}
      onSeenAs={(change) => setSeenAs((before) => ({ ...before, ...change }))}
    />
  );
}

interface MappingProps extends FileMappingProps {
  sketch: PriceFileSketch;
  onSeenAs: (change: SeenAs) => void;
}

function Mapping({ supplierId, file, sketch, onSeenAs }: MappingProps) {
  const by = useBy();
  const navigate = useNavigate();
  const [draft, setDraft] = useState<MappingDraft>(() => draftFrom(sketch));
  const [asked, setAsked] = useState(false);
  const read = useWrite(
    deskQuery.parts.readPriceFile.mutationOptions({
      onSuccess: ({ id }) => navigate(`/parts/price-files/${id}`),
    }),
  );
  const mapping = mappingOf(draft, sketch);
  const send = () => {
    setAsked(true);
    if (mapping !== null)
      read.mutate({ by, supplierId, fileName: file.name, bytes: file.bytes, mapping });
  };
  return (
    <Stack>
      <ReadingForm
        sketch={sketch}
        draft={draft}
        onSeenAs={onSeenAs}
        onDraft={(change) => setDraft((before) => ({ ...before, ...change }))}
      />
      <Card title="Columns" flush>
        <Text px="md" pb="sm" c="dimmed" size="sm">
          {sketch.columnsFrom === 'last-file'
            ? 'As in this supplier’s last file. See that they still hold what they did.'
            : 'Proposed from the headings. See that each column holds what is said above it.'}
        </Text>
        <SampleTable
          sketch={sketch}
          draft={draft}
          onField={(column, field) => setDraft((before) => withField(before, column, field))}
        />
      </Card>
      {asked && mapping === null && (
        <Alert role="alert" color="red">
          Say which column holds the part’s number, and which what one costs you.
        </Alert>
      )}
      <RefusalAlert error={read.error} />
      <Group justify="flex-end">
        <Button
          leftSection={<IconTableImport size={18} aria-hidden />}
          loading={read.isPending}
          onClick={send}
        >
          Read the file
        </Button>
      </Group>
    </Stack>
  );
}
