import { ActionIcon, Button, Group, Menu } from '@mantine/core';
import { notifications } from '@mantine/notifications';
import {
  IconChevronDown,
  IconDownload,
  IconExternalLink,
  IconFileText,
  IconPrinter,
} from '@tabler/icons-react';
import { useMutation } from '@tanstack/react-query';
import type { PaperCard } from '../../shared/contract/counter/index.ts';
import {
  openPaperFile,
  opensPapers,
  type PaperAction,
  printPaperFile,
  savePaperFile,
} from './paper-file.ts';
import { refusalOf } from './refusal.tsx';

/**
 * An issued paper. The button opens it in a browser and prints it from the program's own window; the
 * menu beside it has what else can be done. In a list of papers it is quiet: its name, and no box.
 */
export function PaperButton({ paper, quiet = false }: { paper: PaperCard; quiet?: boolean }) {
  const act = useMutation({
    mutationFn: (action: PaperAction) => action(paper.id),
    onError: (error) => {
      notifications.show({ color: 'red', message: refusalOf(error).message, autoClose: false });
    },
  });
  const name = paper.title;
  const opens = opensPapers();
  return (
    <Group gap={2} wrap="nowrap">
      <Button
        variant={quiet ? 'subtle' : 'default'}
        mih={44}
        px={quiet ? 'xs' : undefined}
        miw={quiet ? '14rem' : undefined}
        justify={quiet ? 'flex-start' : undefined}
        leftSection={<IconFileText size={18} aria-hidden />}
        loading={act.isPending}
        onClick={() => act.mutate(opens ? openPaperFile : printPaperFile)}
      >
        {name}
      </Button>
      <Menu position="bottom-end">
        <Menu.Target>
          <ActionIcon
            variant={quiet ? 'subtle' : 'default'}
            color={quiet ? 'gray' : undefined}
            size={44}
            aria-label={`${name}: print or save`}
          >
            <IconChevronDown size={18} aria-hidden />
          </ActionIcon>
        </Menu.Target>
        <Menu.Dropdown>
          {opens && (
            <Menu.Item
              leftSection={<IconExternalLink size={18} aria-hidden />}
              onClick={() => act.mutate(openPaperFile)}
            >
              Open
            </Menu.Item>
          )}
          <Menu.Item
            leftSection={<IconPrinter size={18} aria-hidden />}
            onClick={() => act.mutate(printPaperFile)}
          >
            Print
          </Menu.Item>
          <Menu.Item
            leftSection={<IconDownload size={18} aria-hidden />}
            onClick={() => act.mutate(savePaperFile)}
          >
            Save the PDF
          </Menu.Item>
        </Menu.Dropdown>
      </Menu>
    </Group>
  );
}
