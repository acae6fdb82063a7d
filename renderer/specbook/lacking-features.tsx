import { Button, Group, Text, TextInput } from '@mantine/core';
import { IconChevronRight, IconPlus } from '@tabler/icons-react';
import { useEffect, useRef, useState } from 'react';
import { isTorque } from '../../shared/work/bench/torque-check.ts';
import {
  CORE_FEATURES,
  DERIVED_FEATURES,
  FEATURE_LABELS,
  type Feature,
  RUN_FEATURES,
} from '../../shared/work/features.ts';
import classes from './specbook.module.css';

const isAmong = (list: readonly Feature[], feature: Feature): boolean => list.includes(feature);

const GROUPS = ['Every rebuild', 'Tightening', 'Computed', 'Test run', 'Other sizes'] as const;
type GroupName = (typeof GROUPS)[number];

function groupOf(feature: Feature): GroupName {
  if (isAmong(CORE_FEATURES, feature)) return 'Every rebuild';
  if (isTorque(feature)) return 'Tightening';
  if (isAmong(DERIVED_FEATURES, feature)) return 'Computed';
  return isAmong(RUN_FEATURES, feature) ? 'Test run' : 'Other sizes';
}

const matches = (feature: Feature, typed: string): boolean =>
  typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => FEATURE_LABELS[feature].toLowerCase().includes(word));

/** What the book says nothing of for this engine: folded, since most of it is nobody's errand today. */
export function LackingFeatures({
  features,
  all,
  onAdd,
}: {
  readonly features: readonly Feature[];
  /** Nothing at all is in the book yet: this is where one begins. */
  readonly all: boolean;
  readonly onAdd: (feature: Feature) => void;
}) {
  const [typed, setTyped] = useState('');
  const [open, setOpen] = useState(all);
  const found = features.filter((feature) => matches(feature, typed.trim()));
  const list = useFocusOnNext(features);
  if (features.length === 0) return null;
  return (
    <details
      ref={list}
      className={classes.lacking}
      open={open}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <IconChevronRight size={18} aria-hidden />
        Not in the book yet: {features.length}
      </summary>
      <TextInput
        label="Find among them"
        placeholder="clearance, bolts, speed"
        value={typed}
        onChange={(event) => setTyped(event.currentTarget.value)}
        maw="22rem"
        mb="sm"
      />
      {found.length === 0 && <Text role="status">Nothing of that name is lacking.</Text>}
      {GROUPS.map((group) => {
        const own = found.filter((feature) => groupOf(feature) === group);
        return (
          own.length > 0 && (
            <section key={group} aria-label={group}>
              <Text size="sm" fw={600} mb={4}>
                {group}
              </Text>
              <Group gap="xs" mb="sm">
                {own.map((feature) => (
                  <Button
                    key={feature}
                    data-feature={feature}
                    variant="default"
                    leftSection={<IconPlus size={16} aria-hidden />}
                    onClick={() => onAdd(feature)}
                  >
                    {FEATURE_LABELS[feature]}
                  </Button>
                ))}
              </Group>
            </section>
          )
        );
      })}
    </details>
  );
}

/** The button that was pressed goes once its specification is in the book: the focus goes to the next. */
function useFocusOnNext(features: readonly Feature[]) {
  const list = useRef<HTMLDetailsElement>(null);
  const before = useRef(features);
  useEffect(() => {
    const gone = before.current.findIndex((feature) => !features.includes(feature));
    const next = gone < 0 ? undefined : features[gone];
    before.current = features;
    if (next === undefined || document.querySelector('[role="dialog"]') !== null) return;
    list.current?.querySelector<HTMLElement>(`[data-feature="${next}"]`)?.focus();
  }, [features]);
  return list;
}
