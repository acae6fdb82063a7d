import { ActionIcon, UnstyledButton } from '@mantine/core';
import { IconArrowDown, IconArrowUp, IconLock, IconTrash } from '@tabler/icons-react';
import type { ReactNode } from 'react';
import { type BuildStep, STEP_KIND_LABELS } from '../../../shared/work/bench/build-steps.ts';
import classes from './build-sheet.module.css';

/** One step of the sheet, with what can be done to it. */
export function StepRow(props: {
  readonly step: BuildStep;
  readonly number: number;
  readonly last: boolean;
  /** The same step as it is inherited; null for one of the sheet's own. */
  readonly inherited: BuildStep | null;
  readonly onMove: (by: -1 | 1) => void;
  readonly onEdit: () => void;
  readonly onLeaveOut: () => void;
}) {
  const { step, number, inherited } = props;
  const origin =
    inherited === null
      ? 'own step'
      : JSON.stringify(inherited) === JSON.stringify(step)
        ? ''
        : 'amended';
  return (
    <li className={classes.row}>
      <span className={classes.number} aria-hidden>
        {number}
      </span>
      <UnstyledButton
        className={classes.label}
        data-edit
        aria-label={`Edit: ${step.label}`}
        onClick={props.onEdit}
      >
        <span>{step.label}</span>
        <span className={classes.facts}>
          {STEP_KIND_LABELS[step.kind]}
          {step.hold && (
            <>
              <IconLock size={15} aria-hidden /> hold point
            </>
          )}
          {origin !== '' && <span className={classes.origin}>{origin}</span>}
        </span>
      </UnstyledButton>
      <span className={classes.buttons}>
        <Icon
          label={`Move up: ${step.label}`}
          disabled={number === 1}
          onClick={() => props.onMove(-1)}
        >
          <IconArrowUp size={20} aria-hidden />
        </Icon>
        <Icon
          label={`Move down: ${step.label}`}
          disabled={props.last}
          onClick={() => props.onMove(1)}
        >
          <IconArrowDown size={20} aria-hidden />
        </Icon>
        <Icon label={`Leave out: ${step.label}`} disabled={false} onClick={props.onLeaveOut}>
          <IconTrash size={20} aria-hidden />
        </Icon>
      </span>
    </li>
  );
}

function Icon(props: {
  readonly label: string;
  readonly disabled: boolean;
  readonly onClick: () => void;
  readonly children: ReactNode;
}) {
  return (
    <ActionIcon
      variant="subtle"
      color="gray"
      size={48}
      aria-label={props.label}
      // Still in the way of the Tab key: whoever moved a step to the end does not lose the focus.
      aria-disabled={props.disabled}
      data-disabled={props.disabled || undefined}
      onClick={() => {
        if (!props.disabled) props.onClick();
      }}
    >
      {props.children}
    </ActionIcon>
  );
}
