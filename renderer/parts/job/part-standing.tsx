import { Badge, Text } from '@mantine/core';
import {
  IconCircleCheck,
  IconCircleX,
  IconPackageExport,
  IconTruckDelivery,
} from '@tabler/icons-react';
import { Link } from 'react-router';
import type { JobPart } from '../../../shared/contract/parts/index.ts';
import { useFormat } from '../../common/format.ts';

/** How one part of a job stands: a word, a shape and a colour. */
export function PartStanding({ line }: { line: JobPart }) {
  const { date } = useFormat();
  const { missing, onOrder, expectedOn, needed, issued, isKit, part } = line;
  if (missing > 0 && onOrder >= missing)
    return (
      <>
        <Badge
          variant="light"
          color="orange"
          leftSection={<IconTruckDelivery size={15} aria-hidden />}
        >
          On order
        </Badge>
        <Text size="xs" c="dimmed">
          {expectedOn === null ? 'no day given' : `expected ${date(expectedOn)}`}
        </Text>
      </>
    );
  if (missing > 0)
    return (
      <>
        <Badge variant="light" color="red" leftSection={<IconCircleX size={15} aria-hidden />}>
          To be ordered
        </Badge>
        {onOrder > 0 && (
          <Text size="xs" c="dimmed">
            part of it is on order
          </Text>
        )}
      </>
    );
  if (needed > issued)
    return (
      <>
        <Badge
          variant="light"
          color="blue"
          leftSection={<IconPackageExport size={15} aria-hidden />}
        >
          Ready to issue
        </Badge>
        {isKit && (
          <Text size="xs" component={Link} to={`/part/${part.id}`} td="underline">
            It is a kit: open it there
          </Text>
        )}
      </>
    );
  return (
    <Badge variant="light" color="green" leftSection={<IconCircleCheck size={15} aria-hidden />}>
      Issued
    </Badge>
  );
}
