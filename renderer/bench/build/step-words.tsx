import {
  IconArrowsLeftRight,
  IconCamera,
  IconCheck,
  IconCircleCheck,
  IconDropletFilled,
  IconEngine,
  IconPlugConnected,
  IconRulerMeasure,
  IconTool,
  type TablerIcon,
} from '@tabler/icons-react';
import type { StepOnBuild } from '../../../shared/contract/bench/index.ts';
import type { StepKind } from '../../../shared/work/bench/build-steps.ts';

export const KIND_ICONS: Record<StepKind, TablerIcon> = {
  confirm: IconCircleCheck,
  measure: IconRulerMeasure,
  torque: IconTool,
  orientation: IconArrowsLeftRight,
  wiring: IconPlugConnected,
  quantity: IconDropletFilled,
  photo: IconCamera,
  run: IconEngine,
};

/** What the button that passes the step says. */
export const PASS_WORDS: Record<StepKind, string> = {
  confirm: 'Seen and done',
  measure: 'Measured and set: pass',
  torque: 'Tightened: pass',
  orientation: 'It lies this way',
  wiring: 'Joined as in the diagram',
  quantity: 'Filled: pass',
  photo: 'Photo taken: pass',
  run: 'Test run done: pass',
};

export const PassIcon = IconCheck;

/** How a step stands, in a word or two. */
export function stateWords({
  state,
  hold,
  openedAgain,
}: Pick<StepOnBuild, 'state' | 'hold' | 'openedAgain'>): string {
  if (openedAgain !== null) return 'open again';
  if (state === 'passed') return 'done';
  if (state === 'overridden') return 'overridden';
  return hold ? 'open, hold point' : 'open';
}
