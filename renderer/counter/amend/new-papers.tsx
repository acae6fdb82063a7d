import { Button, Group, Stack, Text } from '@mantine/core';
import { useEffect, useRef } from 'react';
import type { PaperCard } from '../../../shared/contract/counter/index.ts';
import { PaperButton } from '../../common/paper-button.tsx';

interface NewPapersProps {
  papers: readonly PaperCard[];
  onClose: () => void;
}

/** After something was mended: the papers that say so, to be printed and put in place of those before. */
export function NewPapers({ papers, onClose }: NewPapersProps) {
  const close = useRef<HTMLButtonElement>(null);
  // The form that had the focus is gone.
  useEffect(() => close.current?.focus(), []);
  return (
    <Stack gap="sm">
      <Text role="status">
        It is written down. What stands on a paper changed:{' '}
        {papers.length === 1
          ? 'this one takes the place of the one before, which is kept as it was.'
          : 'these take the place of those before, which are kept as they were.'}
      </Text>
      <Stack gap="xs" align="flex-start">
        {papers.map((paper) => (
          <PaperButton key={paper.id} paper={paper} />
        ))}
      </Stack>
      <Group justify="flex-end">
        <Button ref={close} onClick={onClose}>
          Close
        </Button>
      </Group>
    </Stack>
  );
}
