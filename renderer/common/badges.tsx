import { Badge } from '@mantine/core';
import {
  IconBox,
  IconCircleCheck,
  IconCircleDashed,
  IconCircleHalf2,
  IconCircleMinus,
  IconCircleX,
  IconClipboardCheck,
  IconHandStop,
  IconInbox,
  IconMessageQuestion,
  IconProgressHelp,
  IconScale,
  IconStethoscope,
  IconTool,
  type TablerIcon,
} from '@tabler/icons-react';
import type { Verdict } from '../../shared/contract/bench/index.ts';
import { JOB_STATE_LABELS, type JobState } from '../../shared/work/counter/job-state.ts';
import { STANDING_LABELS, type Standing } from '../../shared/work/vocabulary.ts';

interface Look {
  label: string;
  icon: TablerIcon;
  color: string;
}

/** Word, shape and colour: none of the three is needed to tell two badges apart. */
function LookBadge({ look }: { look: Look }) {
  const Icon = look.icon;
  return (
    <Badge variant="light" color={look.color} leftSection={<Icon size={15} aria-hidden />}>
      {look.label}
    </Badge>
  );
}

const STATE_LOOKS: Record<JobState, Omit<Look, 'label'>> = {
  'taken-in': { icon: IconInbox, color: 'gray' },
  diagnosis: { icon: IconStethoscope, color: 'indigo' },
  'customer-to-decide': { icon: IconMessageQuestion, color: 'yellow' },
  'go-ahead': { icon: IconClipboardCheck, color: 'petrol' },
  'waits-for-parts': { icon: IconBox, color: 'orange' },
  'on-the-bench': { icon: IconTool, color: 'petrol' },
  ready: { icon: IconCircleCheck, color: 'green' },
  'handed-over': { icon: IconCircleMinus, color: 'gray' },
  stopped: { icon: IconHandStop, color: 'red' },
};

export function StateBadge({ state }: { state: JobState }) {
  return <LookBadge look={{ ...STATE_LOOKS[state], label: JOB_STATE_LABELS[state] }} />;
}

const VERDICT_LOOKS: Record<Verdict, Look> = {
  within: { label: 'Within', icon: IconCircleCheck, color: 'green' },
  outside: { label: 'Outside', icon: IconCircleX, color: 'red' },
  'too-close': { label: 'Too close to call', icon: IconScale, color: 'yellow' },
  'no-band': { label: 'No band', icon: IconCircleDashed, color: 'gray' },
};

export function VerdictBadge({ verdict }: { verdict: Verdict }) {
  return <LookBadge look={VERDICT_LOOKS[verdict]} />;
}

const STANDING_LOOKS: Record<Standing, Omit<Look, 'label'>> = {
  confirmed: { icon: IconCircleCheck, color: 'green' },
  'single-source': { icon: IconCircleHalf2, color: 'indigo' },
  unconfirmed: { icon: IconProgressHelp, color: 'orange' },
};

export function StandingBadge({ standing }: { standing: Standing }) {
  return <LookBadge look={{ ...STANDING_LOOKS[standing], label: STANDING_LABELS[standing] }} />;
}
