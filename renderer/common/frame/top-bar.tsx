import { ActionIcon, Button, Kbd, Tooltip } from '@mantine/core';
import { IconHelp, IconPlus, IconSearch } from '@tabler/icons-react';
import { Link } from 'react-router';
import { ClockChip } from '../clock/clock-chip.tsx';
import { MOD } from '../keyboard.ts';
import { useStation } from '../station.tsx';
import classes from './frame.module.css';
import { PersonFace } from './people-list.tsx';
import { ThemeSwitch } from './theme-switch.tsx';
import type { FrameActions } from './use-shortcuts.ts';

/** Search, taking in, and who is here: on top of every page. */
export function TopBar({ actions }: { actions: FrameActions }) {
  const { staff } = useStation();
  return (
    <header className={classes.top}>
      <button
        type="button"
        className={classes.search}
        onClick={actions.search}
        aria-keyshortcuts="Control+K Meta+K"
      >
        <IconSearch size={20} aria-hidden />
        <span className={classes.searchWords}>Search, or scan a tag</span>
        <Kbd aria-hidden>{MOD} K</Kbd>
      </button>
      <span className={classes.spring} />
      <Button
        component={Link}
        to="/take-in"
        flex="none"
        leftSection={<IconPlus size={20} aria-hidden />}
        aria-keyshortcuts="F2"
        title="F2"
      >
        Take in
      </Button>
      <ClockChip />
      {staff !== null && (
        <button
          type="button"
          className={classes.person}
          onClick={actions.station}
          aria-keyshortcuts="F8"
          title="F8"
        >
          <PersonFace person={staff} size={34} />
          <span className={classes.personWords}>
            <span className={classes.personName}>{staff.name}</span>
            <span className={classes.personHint}>at this station</span>
          </span>
        </button>
      )}
      <ThemeSwitch />
      <Tooltip label="Keys (?)">
        <ActionIcon
          variant="subtle"
          color="gray"
          size={42}
          aria-label="Keys"
          onClick={actions.help}
        >
          <IconHelp size={22} aria-hidden />
        </ActionIcon>
      </Tooltip>
    </header>
  );
}
