import { Button, Stack, Text } from '@mantine/core';
import { IconPencil } from '@tabler/icons-react';
import type { Finding } from '../../../shared/contract/bench/index.ts';
import { FOUND_LABELS } from '../../../shared/work/bench/diagnosis.ts';
import { figureLines, figureRemarks } from '../../../shared/work/bench/diagnosis-words.ts';
import { LINE_KIND_LABELS } from '../../../shared/work/vocabulary.ts';
import { useFormat } from '../../common/format.ts';
import { FoundMark } from './check-list.tsx';
import classes from './diagnose.module.css';

/** What was found, by whom and when. */
export function NotedFinding({
  finding,
  onCorrect,
}: {
  readonly finding: Finding;
  /** Null where the record is closed, or for one that was corrected since. */
  readonly onCorrect: (() => void) | null;
}) {
  const format = useFormat();
  const { check, found, figures, words, work, by, at } = finding;
  return (
    <div className={classes.noted}>
      <FoundMark found={found} />
      <Stack gap={4} flex={1} align="flex-start">
        <Text fw={650}>{FOUND_LABELS[found]}</Text>
        {figureLines(figures).map((line) => (
          <Text key={line} fw={600} className={classes.read}>
            {line}
          </Text>
        ))}
        {figureRemarks(check, figures).map((remark) => (
          <Text key={remark} size="sm">
            {remark}
          </Text>
        ))}
        {words !== '' && <Text className={classes.words}>{words}</Text>}
        {work.length > 0 && (
          <ul className={classes.takes} aria-label="What it takes">
            {work.map(({ kind, description }) => (
              <li key={`${kind} ${description}`}>
                {LINE_KIND_LABELS[kind]}: {description}
              </li>
            ))}
          </ul>
        )}
        <Text size="sm" c="dimmed">
          {by}, {format.instant(at)}
        </Text>
        {onCorrect !== null && (
          <Button
            variant="default"
            size="md"
            leftSection={<IconPencil size={18} aria-hidden />}
            onClick={onCorrect}
          >
            Correct it
          </Button>
        )}
      </Stack>
    </div>
  );
}
