import { Button, Group, Stack, Text } from '@mantine/core';
import type { PaperCard } from '../../../shared/contract/counter.ts';
import { PaperButton } from '../../common/paper-button.tsx';

interface NewPapersProps {
  papers: readonly PaperCard[];
  onClose: () => void;
}

/** After something was mended: the papers that say so, to be printed and put in place of those before. */
export function NewPapers({ papers, onClose }: NewPapersProps) {
  return (
    <Stack gap="sm">
      <Text role="status">
        It is written down. What stands on a paper changed, so that{' '}
        {papers.length === 1 ? 'this one takes' : 'these take'} the place of the one before, which
        is kept as it was.
      </Text>
      <Stack gap="xs" align="flex-start">
        {papers.map((paper) => (
          <PaperButton key={paper.id} paper={paper} />
        ))}
      </Stack>
      <Group justify="flex-end">
        <Button data-autofocus onClick={onClose}>
          Close
        </Button>
      </Group>
    </Stack>
  );
}
