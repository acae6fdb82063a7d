import { Button, Group } from '@mantine/core';
import { IconFileExport } from '@tabler/icons-react';
import { useMutation } from '@tanstack/react-query';
import type { EngineModelId } from '../../shared/contract/ids.ts';
import { MODEL_FILE_FORMS, type ModelFileForm } from '../../shared/contract/specbook-exchange.ts';
import { desk } from '../common/desk.ts';
import { RefusalAlert } from '../common/refusal.tsx';
import { saveFile } from '../common/save-file.ts';

const FORM_LABELS: Record<ModelFileForm, string> = {
  json: 'Export as a file for Tappet (JSON)',
  csv: 'Export for a spreadsheet (CSV)',
};

const MEDIA_TYPES: Record<ModelFileForm, string> = {
  json: 'application/json',
  csv: 'text/csv',
};

/** Hands an entry out, with what it states itself and where that comes from. */
export function ExportButtons({ id }: { readonly id: EngineModelId }) {
  const hand = useMutation({
    mutationFn: async (format: ModelFileForm) => {
      const { fileName, text } = await desk.specbook.exportModel({ id, format });
      saveFile(fileName, text, MEDIA_TYPES[format]);
    },
  });
  return (
    <>
      <Group gap="xs">
        {MODEL_FILE_FORMS.map((format) => (
          <Button
            key={format}
            variant="default"
            leftSection={<IconFileExport size={18} aria-hidden />}
            loading={hand.isPending && hand.variables === format}
            onClick={() => hand.mutate(format)}
          >
            {FORM_LABELS[format]}
          </Button>
        ))}
      </Group>
      <RefusalAlert error={hand.error} />
    </>
  );
}
