import {
  IconCircle,
  IconCircleCheck,
  IconCircleDashed,
  IconCircleX,
  IconScale,
} from '@tabler/icons-react';
import type { Verdict } from '../../shared/contract/bench/index.ts';
import classes from './bench.module.css';

const MARKS = {
  within: IconCircleCheck,
  outside: IconCircleX,
  'too-close': IconScale,
  'no-band': IconCircleDashed,
} as const satisfies Record<Verdict, typeof IconCircle>;

/** The shape of a verdict, beside words that say it; an empty ring where nothing is measured. */
export function VerdictMark({ verdict }: { readonly verdict: Verdict | null }) {
  const Mark = verdict === null ? IconCircle : MARKS[verdict];
  return <Mark size={22} aria-hidden className={classes.worst} data-verdict={verdict} />;
}
