import { UnstyledButton } from '@mantine/core';
import { IconCheck, IconPencil } from '@tabler/icons-react';
import type { StepOnBuild } from '../../../shared/contract/bench/index.ts';
import classes from './build.module.css';
import { stateWords } from './step-words.tsx';

/** Every step of the build in its order; any of them can be opened, also out of its order. */
export function StepList({
  steps,
  due,
  at,
  onGo,
}: {
  readonly steps: readonly StepOnBuild[];
  /** The first that is open. */
  readonly due: string | null;
  readonly at: string | null;
  readonly onGo: (key: string) => void;
}) {
  return (
    <nav aria-label="Steps of the build">
      <ol className={classes.list}>
        {steps.map((step, index) => (
          <li key={step.key}>
            <UnstyledButton
              className={classes.item}
              aria-current={step.key === at ? 'step' : undefined}
              onClick={() => onGo(step.key)}
            >
              <span className={classes.number} data-state={step.state} aria-hidden>
                {step.state === 'passed' ? (
                  <IconCheck size={18} />
                ) : step.state === 'overridden' ? (
                  <IconPencil size={17} />
                ) : (
                  index + 1
                )}
              </span>
              <span>
                {step.label}
                <span className={classes.words}>
                  {step.key === due && step.openedAgain === null ? 'next' : stateWords(step)}
                  {step.state !== 'open' && step.doneBefore.length > 0 && ', out of order'}
                </span>
              </span>
            </UnstyledButton>
          </li>
        ))}
      </ol>
    </nav>
  );
}
