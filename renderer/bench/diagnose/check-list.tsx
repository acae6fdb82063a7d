import { Text, UnstyledButton } from '@mantine/core';
import {
  IconCircleCheck,
  IconCircleDashed,
  IconHelpCircle,
  IconTool,
  type TablerIcon,
} from '@tabler/icons-react';
import type { Diagnosis } from '../../../shared/contract/bench/index.ts';
import {
  CHECK_LABELS,
  CHECKS,
  type Check,
  FOUND_LABELS,
  type Found,
} from '../../../shared/work/bench/diagnosis.ts';
import classes from '../bench.module.css';
import own from './diagnose.module.css';
import { standingOn } from './finding-draft.ts';

const MARKS: Record<Found, TablerIcon> = {
  sound: IconCircleCheck,
  'wants-work': IconTool,
  'not-tried': IconHelpCircle,
};

/** The mark of what was found; dashed where nothing was noted yet. */
export function FoundMark({ found }: { readonly found: Found | null }) {
  const Mark = found === null ? IconCircleDashed : MARKS[found];
  return (
    <span className={own.mark} data-found={found ?? 'open'}>
      <Mark size={22} aria-hidden />
    </span>
  );
}

/** The worst of several: what wants work comes before what is sound. */
function worst(founds: readonly Found[]): Found | null {
  return (
    (['wants-work', 'not-tried', 'sound'] as const).find((found) => founds.includes(found)) ?? null
  );
}

/** Every check of a diagnosis, with what it found. */
export function CheckList({
  diagnosis,
  at,
  onGo,
}: {
  readonly diagnosis: Diagnosis;
  readonly at: Check;
  readonly onGo: (check: Check) => void;
}) {
  return (
    <nav aria-label="Checks of the diagnosis">
      <ul className={classes.list}>
        {CHECKS.map((check) => {
          const found = worst(standingOn(diagnosis, check).map((finding) => finding.found));
          return (
            <li key={check}>
              <UnstyledButton
                className={classes.item}
                aria-current={check === at}
                onClick={() => onGo(check)}
              >
                <FoundMark found={found} />
                <span className={classes.itemText}>
                  {CHECK_LABELS[check]}
                  <Text span display="block" size="sm" c="dimmed" fw={400}>
                    {found === null ? 'not looked at' : FOUND_LABELS[found].toLowerCase()}
                  </Text>
                </span>
              </UnstyledButton>
            </li>
          );
        })}
      </ul>
    </nav>
  );
}
