import { Button, FileButton, Group, Modal, Stack, Text } from '@mantine/core';
import { isDefinedError } from '@orpc/client';
import { IconFileImport } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { EngineModelId } from '../../shared/contract/ids.ts';
import type { ModelFileForm } from '../../shared/contract/specbook-exchange.ts';
import { deskQuery } from '../common/desk.ts';
import { QueryView } from '../common/page.tsx';
import { RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import { ImportPreviewView } from './import-preview.tsx';

interface ImportFormProps {
  readonly opened: boolean;
  readonly onClose: () => void;
  readonly onImported: (id: EngineModelId) => void;
}

interface ChosenFile {
  name: string;
  text: string;
  format: ModelFileForm;
}

/** Takes an engine model from a file into the book, after a look at what that would do. */
export function ImportForm(props: ImportFormProps) {
  return (
    <Modal opened={props.opened} onClose={props.onClose} title="Import an engine model" size="xl">
      {props.opened && <Choose {...props} />}
    </Modal>
  );
}

function Choose({ onClose, onImported }: ImportFormProps) {
  const [file, setFile] = useState<ChosenFile | null>(null);
  const [unreadable, setUnreadable] = useState(false);
  const choose = async (chosen: File | null) => {
    if (chosen === null) return;
    setUnreadable(false);
    try {
      const text = await chosen.text();
      const format = /\.csv$/i.test(chosen.name) ? 'csv' : 'json';
      setFile({ name: chosen.name, text, format });
    } catch {
      setFile(null);
      setUnreadable(true);
    }
  };
  return (
    <Stack>
      <Text>
        A file that a spec book exported (JSON), or a table with its columns (CSV). Nothing is
        written before you have seen what it would change.
      </Text>
      <Group>
        <FileButton onChange={choose} accept=".json,.csv,application/json,text/csv">
          {(button) => (
            <Button
              {...button}
              variant={file === null ? 'filled' : 'default'}
              leftSection={<IconFileImport size={18} aria-hidden />}
              data-autofocus
            >
              {file === null ? 'Choose a file…' : 'Choose another file…'}
            </Button>
          )}
        </FileButton>
        {file !== null && <Text>{file.name}</Text>}
      </Group>
      {unreadable && (
        <Text role="alert">That file can’t be read from here. Copy it to this computer first.</Text>
      )}
      {file === null ? (
        <Group justify="flex-end">
          <Button variant="default" onClick={onClose}>
            Close
          </Button>
        </Group>
      ) : (
        <Chosen key={file.text} file={file} onClose={onClose} onImported={onImported} />
      )}
    </Stack>
  );
}

function Chosen({
  file,
  onClose,
  onImported,
}: {
  readonly file: ChosenFile;
  readonly onClose: () => void;
  readonly onImported: (id: EngineModelId) => void;
}) {
  const by = useBy();
  const { text, format } = file;
  const preview = useQuery(
    deskQuery.specbook.previewImport.queryOptions({ input: { text, format } }),
  );
  const take = useWrite(deskQuery.specbook.importModel.mutationOptions());
  const questioned = isDefinedError(take.error) && take.error.code === 'TORQUES_QUESTIONED';
  const send = (keepQuestioned: boolean) =>
    take.mutate(
      { by, text, format, keepQuestioned },
      { onSuccess: ({ engineModelId }) => onImported(engineModelId) },
    );
  return (
    <QueryView query={preview}>
      {(shown) => (
        <>
          <ImportPreviewView preview={shown} />
          <RefusalAlert error={take.error} />
          <Group justify="flex-end">
            <Button variant="default" onClick={onClose}>
              Close
            </Button>
            {shown.issues.length === 0 &&
              (questioned ? (
                <Button color="orange" loading={take.isPending} onClick={() => send(true)}>
                  The sources really say so: take it in
                </Button>
              ) : (
                <Button loading={take.isPending} onClick={() => send(false)}>
                  Take it into the book
                </Button>
              ))}
          </Group>
        </>
      )}
    </QueryView>
  );
}
