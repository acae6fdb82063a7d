import { Button, Group, Menu, Tabs, Text, TextInput } from '@mantine/core';
import { IconColumns, IconCopy, IconFile, IconTrash } from '@tabler/icons-react';
import type { ReactNode } from 'react';
import { MOST_OPTIONS } from '../../../shared/contract/till/index.ts';
import { useMoney } from '../../common/shop.tsx';
import classes from './options.module.css';
import type { DrawnOption, EstimateDraft } from './use-estimate-draft.ts';

interface OptionsProps {
  draft: EstimateDraft;
  /** Also say what is missing in options that nobody has looked at. */
  showMissing: boolean;
  /** The lines of the option that is shown. */
  children: ReactNode;
}

/** The options side by side, each with what it comes to; the one that is chosen is typed into below. */
export function Options({ draft, showMissing, children }: OptionsProps) {
  const money = useMoney();
  const { options, shown } = draft;
  const option = options.find(({ key }) => key === shown);
  if (options.length === 1 || option === undefined)
    return (
      <>
        <Group gap="sm" mb="sm">
          <AddOption draft={draft} label="Put another option beside this" like="the first" />
          <Text size="xs" c="dimmed" flex="1 1 14rem">
            Repair, rebuild or replace the engine: the customer takes one of them.
          </Text>
        </Group>
        {children}
      </>
    );
  return (
    <Tabs
      value={String(shown)}
      onChange={(value) => draft.show(Number(value))}
      className={classes.options}
    >
      <Tabs.List aria-label="Options of the estimate" className={classes.list}>
        {options.map(({ key, label, drawn }) => (
          <Tabs.Tab key={key} value={String(key)} className={classes.tab}>
            <span className={classes.name}>{label.trim() === '' ? 'Without a name' : label}</span>
            <span className={classes.total}>{money(drawn.totals.total)}</span>
            {showMissing && (drawn.ready === null || label.trim() === '') && (
              <span className={classes.missing}>to be mended</span>
            )}
          </Tabs.Tab>
        ))}
      </Tabs.List>
      <Tabs.Panel value={String(shown)} pt="sm">
        <Group gap="sm" align="flex-end" mb="sm">
          <NameOfOption draft={draft} option={option} />
          {options.length < MOST_OPTIONS && (
            <AddOption draft={draft} label="Put another beside these" like="this one" />
          )}
          <Button
            variant="subtle"
            color="gray"
            leftSection={<IconTrash size={18} aria-hidden />}
            onClick={() => draft.removeOption(option.key)}
          >
            Take this option out
          </Button>
        </Group>
        {children}
      </Tabs.Panel>
    </Tabs>
  );
}

function NameOfOption({ draft, option }: { draft: EstimateDraft; option: DrawnOption }) {
  const name = option.label.trim();
  const twice = draft.options.some(({ key, label }) => key !== option.key && label.trim() === name);
  const error =
    name === ''
      ? 'Give it a name that the customer understands.'
      : twice && 'Another option has this name.';
  return (
    <TextInput
      label="Name of this option"
      maw="20rem"
      flex="1 1 12rem"
      maxLength={60}
      value={option.label}
      error={error}
      onChange={(event) => draft.nameOption(option.key, event.currentTarget.value)}
    />
  );
}

function AddOption({ draft, label, like }: { draft: EstimateDraft; label: string; like: string }) {
  return (
    <Menu position="bottom-start">
      <Menu.Target>
        <Button variant="default" size="sm" leftSection={<IconColumns size={18} aria-hidden />}>
          {label}
        </Button>
      </Menu.Target>
      <Menu.Dropdown>
        <Menu.Item
          leftSection={<IconFile size={18} aria-hidden />}
          onClick={() => draft.addOption('empty')}
        >
          Empty
        </Menu.Item>
        <Menu.Item
          leftSection={<IconCopy size={18} aria-hidden />}
          onClick={() => draft.addOption('as-shown')}
        >
          With the lines of {like}
        </Menu.Item>
      </Menu.Dropdown>
    </Menu>
  );
}
