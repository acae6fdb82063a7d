import { Badge, Text } from '@mantine/core';
import {
  IconCircleCheck,
  IconCircleX,
  IconPackageExport,
  IconPackageOff,
  IconTruckDelivery,
} from '@tabler/icons-react';
import { Link } from 'react-router';
import type { JobPart } from '../../../shared/contract/parts/index.ts';
import { useFormat } from '../../common/format.ts';

/** How one part of a job stands: a word, a shape and a colour. */
export function PartStanding({ line }: { line: JobPart }) {
  const { date } = useFormat();
  const { missing, promised, onOrder, expectedOn, open, elsewhere, issued, isKit, part } = line;
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
  if (open > 0)
    return (
      <>
        <Badge
          variant="light"
          color="blue"
          leftSection={<IconPackageExport size={15} aria-hidden />}
        >
          {missing === 0 && promised < open ? 'Not issued' : 'Ready to issue'}
        </Badge>
        {isKit && (
          <Text size="xs" component={Link} to={`/part/${part.id}`} td="underline">
            It is a kit: open it there
          </Text>
        )}
      </>
    );
  if (elsewhere > 0 && issued === 0)
    return (
      <Badge variant="light" color="gray" leftSection={<IconPackageOff size={15} aria-hidden />}>
        Not from stock
      </Badge>
    );
  return (
    <Badge variant="light" color="green" leftSection={<IconCircleCheck size={15} aria-hidden />}>
      Issued
    </Badge>
  );
}
