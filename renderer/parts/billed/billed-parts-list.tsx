import { Anchor, Button, Group, Stack, Text } from '@mantine/core';
import { IconPackageExport } from '@tabler/icons-react';
import { useState } from 'react';
import { Link } from 'react-router';
import type { JobId } from '../../../shared/contract/ids.ts';
import type { BilledPart } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { partsInWords } from '../../common/parts-in-words.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useShop } from '../../common/shop.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from './billed-parts.module.css';
import { FromElsewhereDialog } from './from-elsewhere-dialog.tsx';

interface BilledPartsListProps {
  jobId: JobId;
  parts: readonly BilledPart[];
}

/** Billed parts of one job that have not left the shelf: issued with one press, or said to come from elsewhere. */
export function BilledPartsList({ jobId, parts }: BilledPartsListProps) {
  const by = useBy();
  const { locale } = useShop();
  const [elsewhere, setElsewhere] = useState<BilledPart | null>(null);
  const issue = useWrite(deskQuery.parts.issueBilled.mutationOptions());
  const there = parts.filter(({ onShelf }) => onShelf > 0);
  return (
    <Stack gap="xs">
      <ul className={classes.parts}>
        {parts.map((billed) => {
          const { part, quantity, onShelf } = billed;
          return (
            <li key={part.id} className={classes.part}>
              <span className={classes.name}>
                {formatQuantity(quantity, locale)} {part.unit}{' '}
                <Anchor component={Link} inherit to={`/part/${part.id}`}>
                  {part.number}
                </Anchor>{' '}
                {part.description}
                <Text span size="sm" c="dimmed">
                  {' · '}
                  {onShelf === 0
                    ? 'none in stock for this job'
                    : `${formatQuantity(onShelf, locale)} in stock${part.bin === '' ? '' : `, bin ${part.bin}`}`}
                </Text>
              </span>
              <Button
                variant="subtle"
                size="compact-sm"
                aria-label={`${part.number}: not from stock`}
                onClick={() => setElsewhere(billed)}
              >
                Not from stock…
              </Button>
            </li>
          );
        })}
      </ul>
      <RefusalAlert error={issue.error} />
      {there.length > 0 && (
        <Group>
          <Button
            leftSection={<IconPackageExport size={18} aria-hidden />}
            loading={issue.isPending}
            onClick={() => issue.mutate({ by, jobId })}
          >
            Issue {partsInWords(there, locale)}
          </Button>
        </Group>
      )}
      <FromElsewhereDialog jobId={jobId} billed={elsewhere} onClose={() => setElsewhere(null)} />
    </Stack>
  );
}
