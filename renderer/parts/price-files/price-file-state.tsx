import { Badge } from '@mantine/core';
import {
  IconArrowBackUp,
  IconChecks,
  IconEye,
  IconLoader,
  IconPlayerStop,
  type TablerIcon,
} from '@tabler/icons-react';
import {
  PRICE_FILE_STATE_LABELS,
  type PriceFileState,
} from '../../../shared/work/parts/stock-words.ts';

const LOOKS: Record<PriceFileState, { icon: TablerIcon; color: string }> = {
  reading: { icon: IconLoader, color: 'indigo' },
  read: { icon: IconEye, color: 'yellow' },
  stopped: { icon: IconPlayerStop, color: 'gray' },
  applied: { icon: IconChecks, color: 'green' },
  undone: { icon: IconArrowBackUp, color: 'gray' },
};

/** Word, shape and colour. */
export function PriceFileStateBadge({ state }: { state: PriceFileState }) {
  const { icon: Icon, color } = LOOKS[state];
  return (
    <Badge variant="light" color={color} leftSection={<Icon size={15} aria-hidden />}>
      {PRICE_FILE_STATE_LABELS[state]}
    </Badge>
  );
}
