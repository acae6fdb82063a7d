import { Button, FileButton, Group, Modal, Text, Title } from '@mantine/core';
import { IconFileTypePdf, IconPaperclip, IconPhoto } from '@tabler/icons-react';
import { useMutation, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Source, Specification } from '../../shared/contract/specbook.ts';
import type { SourceFile } from '../../shared/contract/specbook-files.ts';
import { paperBytes, savePaper } from '../common/connection/papers.ts';
import { desk, deskQuery } from '../common/desk.ts';
import { base64Of } from '../common/file-bytes.ts';
import { useFormat } from '../common/format.ts';
import { RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import classes from './specbook.module.css';
import { sourceWords } from './specification-words.ts';

/** The sources of an entry, each with the pages of it that the shop keeps. */
export function Sources({ specifications }: { readonly specifications: readonly Specification[] }) {
  const sources = new Map<string, Source>();
  for (const { source, confirmations, contradictions } of specifications)
    for (const each of [
      source,
      ...confirmations.map((confirmation) => confirmation.source),
      ...contradictions.map((contradiction) => contradiction.source),
    ])
      sources.set(each.id, each);
  if (sources.size === 0) return null;
  return (
    <section aria-label="Sources">
      <Title order={2} size="h3" mb="xs">
        Sources
      </Title>
      {[...sources.values()].map((source) => (
        <SourceWithFiles key={source.id} source={source} />
      ))}
    </section>
  );
}

function SourceWithFiles({ source }: { readonly source: Source }) {
  const by = useBy();
  const query = useQuery(
    deskQuery.specbook.sourceFiles.queryOptions({ input: { sourceId: source.id } }),
  );
  const add = useWrite(deskQuery.specbook.addSourceFile.mutationOptions());
  const [unreadable, setUnreadable] = useState(false);
  const choose = async (file: File | null) => {
    if (file === null) return;
    setUnreadable(false);
    try {
      const bytes = await base64Of(file);
      add.mutate({ by, sourceId: source.id, fileName: file.name, bytes });
    } catch {
      setUnreadable(true);
    }
  };
  const files = query.data ?? [];
  const words = sourceWords(source, '');
  return (
    <article aria-label={words} className={classes.source}>
      <Group justify="space-between" gap="xs">
        <Text>{words}</Text>
        <FileButton onChange={choose} accept="application/pdf,image/jpeg,image/png,image/webp">
          {(button) => (
            <Button
              {...button}
              size="sm"
              variant="subtle"
              leftSection={<IconPaperclip size={16} aria-hidden />}
              loading={add.isPending}
              aria-label={`Add a page: ${words}`}
            >
              Add a page or scan…
            </Button>
          )}
        </FileButton>
      </Group>
      {query.isError && <RefusalAlert error={query.error} />}
      {files.length > 0 && (
        <ul className={classes.files}>
          {files.map((file) => (
            <li key={file.id}>
              <FileRow file={file} />
            </li>
          ))}
        </ul>
      )}
      <RefusalAlert error={add.error} />
      {unreadable && (
        <Text role="alert">That file can’t be read from here. Copy it to this computer first.</Text>
      )}
    </article>
  );
}

function FileRow({ file }: { readonly file: SourceFile }) {
  const format = useFormat();
  const [picture, setPicture] = useState<string | null>(null);
  const isPdf = file.mediaType === 'application/pdf';
  const open = useMutation({
    mutationFn: async () => {
      const { bytes } = await desk.specbook.sourceFile({ id: file.id });
      if (isPdf) await savePaper(pdfName(file.fileName), paperBytes(bytes));
      else setPicture(`data:${file.mediaType};base64,${bytes}`);
    },
  });
  const Icon = isPdf ? IconFileTypePdf : IconPhoto;
  return (
    <>
      <Group gap="xs">
        <Button
          size="sm"
          variant="default"
          leftSection={<Icon size={16} aria-hidden />}
          loading={open.isPending}
          onClick={() => open.mutate()}
        >
          {isPdf ? `Save ${file.fileName}` : `Look at ${file.fileName}`}
        </Button>
        <Text size="sm" c="dimmed">
          {sizeWords(file.size)}, by {file.by}, {format.instant(file.at)}, fingerprint{' '}
          {file.sha256.slice(0, 12)}
        </Text>
      </Group>
      <RefusalAlert error={open.error} />
      <Modal
        opened={picture !== null}
        onClose={() => setPicture(null)}
        title={file.fileName}
        size="auto"
      >
        {picture !== null && <img src={picture} alt={file.fileName} className={classes.page} />}
      </Modal>
    </>
  );
}

const pdfName = (name: string): string => (/\.pdf$/i.test(name) ? name : `${name}.pdf`);

const sizeWords = (bytes: number): string =>
  bytes < 1024 * 1024
    ? `${Math.max(1, Math.round(bytes / 1024))} kB`
    : `${(bytes / 1024 / 1024).toFixed(1)} MB`;
