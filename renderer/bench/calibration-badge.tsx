import { Badge } from '@mantine/core';
import {
  IconCalendarCheck,
  IconCalendarOff,
  IconCalendarQuestion,
  IconRulerOff,
} from '@tabler/icons-react';
import type { Gauge } from '../../shared/contract/bench/index.ts';

/** Whether a gauge's calibration holds: word, shape and colour. */
export function CalibrationBadge({ gauge }: { readonly gauge: Gauge }) {
  if (gauge.foundBadOn !== null)
    return (
      <Badge variant="light" color="red" leftSection={<IconRulerOff size={15} aria-hidden />}>
        Found bad
      </Badge>
    );
  if (gauge.expired)
    return (
      <Badge variant="light" color="red" leftSection={<IconCalendarOff size={15} aria-hidden />}>
        Expired
      </Badge>
    );
  if (gauge.calibrationDue === null)
    return (
      <Badge
        variant="light"
        color="gray"
        leftSection={<IconCalendarQuestion size={15} aria-hidden />}
      >
        No date noted
      </Badge>
    );
  return (
    <Badge variant="light" color="green" leftSection={<IconCalendarCheck size={15} aria-hidden />}>
      In date
    </Badge>
  );
}
