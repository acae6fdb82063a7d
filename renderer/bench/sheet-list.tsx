import { Text, UnstyledButton } from '@mantine/core';
import { IconLock, IconMathFunction } from '@tabler/icons-react';
import type { ReactNode } from 'react';
import type { BenchSheet } from '../../shared/contract/bench/index.ts';
import { PHASE_LABELS, type Phase } from '../../shared/work/vocabulary.ts';
import classes from './bench.module.css';
import { summarise } from './sheet-reading.ts';
import { VerdictMark } from './verdict-mark.tsx';

/** Where the bench page stands: at a feature, at what is computed, or at the hold points. */
export type Station = BenchSheet['features'][number]['feature'] | 'computed' | 'hold-points';

/** Everything on the sheet, with how far each part of it is. */
export function SheetList({
  sheet,
  phase,
  at,
  onGo,
}: {
  readonly sheet: BenchSheet;
  readonly phase: Phase;
  readonly at: Station;
  readonly onGo: (to: Station) => void;
}) {
  const settled = sheet.holdPoints.filter(({ state }) => state !== 'open').length;
  const derived = sheet.derived.filter((figure) => figure.phase === phase);
  const asks = derived.filter(({ verdict }) => verdict === 'outside').length;
  const asked = sheet.features.filter((feature) => feature.asked);
  const more = sheet.features.filter((feature) => !feature.asked);
  const inMore = more.some(({ feature }) => feature === at);
  return (
    <nav aria-label={`Bench sheet, ${PHASE_LABELS[phase].toLowerCase()}`}>
      <ul className={classes.list}>
        {asked.map((feature) => (
          <FeatureItem
            key={feature.feature}
            feature={feature}
            phase={phase}
            current={at === feature.feature}
            onGo={onGo}
          />
        ))}
      </ul>
      {more.length > 0 && (
        <details className={classes.more} open={inMore || undefined}>
          <summary>More features ({more.length})</summary>
          <ul className={classes.list}>
            {more.map((feature) => (
              <FeatureItem
                key={feature.feature}
                feature={feature}
                phase={phase}
                current={at === feature.feature}
                onGo={onGo}
              />
            ))}
          </ul>
        </details>
      )}
      <hr className={classes.divider} />
      <ul className={classes.list}>
        <li>
          <Item current={at === 'computed'} onGo={() => onGo('computed')}>
            <IconMathFunction size={22} aria-hidden />
            <ItemText
              label="Computed"
              words={
                derived.length === 0
                  ? 'nothing yet'
                  : `${derived.length} ${derived.length === 1 ? 'figure' : 'figures'}${asks > 0 ? `, ${asks} outside` : ''}`
              }
            />
          </Item>
        </li>
        <li>
          <Item current={at === 'hold-points'} onGo={() => onGo('hold-points')}>
            <IconLock size={22} aria-hidden />
            <ItemText
              label="Hold points"
              words={`${settled} of ${sheet.holdPoints.length} settled`}
            />
          </Item>
        </li>
      </ul>
    </nav>
  );
}

function FeatureItem({
  feature,
  phase,
  current,
  onGo,
}: {
  readonly feature: BenchSheet['features'][number];
  readonly phase: Phase;
  readonly current: boolean;
  readonly onGo: (to: Station) => void;
}) {
  const summary = summarise(feature, phase);
  return (
    <li>
      <Item current={current} onGo={() => onGo(feature.feature)}>
        <VerdictMark verdict={summary.worst} />
        <ItemText
          label={feature.label}
          words={
            summary.measured === 0
              ? summary.words
              : `${summary.measured} of ${summary.places}, ${summary.words}`
          }
        />
      </Item>
    </li>
  );
}

function Item(props: {
  readonly current: boolean;
  readonly onGo: () => void;
  readonly children: ReactNode;
}) {
  return (
    <UnstyledButton
      className={classes.item}
      aria-current={props.current ? 'true' : undefined}
      onClick={props.onGo}
    >
      {props.children}
    </UnstyledButton>
  );
}

function ItemText({ label, words }: { readonly label: string; readonly words: string }) {
  return (
    <span className={classes.itemText}>
      {label}
      <Text component="span" display="block" size="sm" c="dimmed" fw={400}>
        {words}
      </Text>
    </span>
  );
}
