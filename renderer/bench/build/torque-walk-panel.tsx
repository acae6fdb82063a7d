import { Button, Text } from '@mantine/core';
import { IconCircleCheck, IconTool } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import type { TorqueWalk } from '../../../shared/contract/bench/index.ts';
import { unitLabel } from '../../../shared/trade/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { BoltPicture } from '../../common/measure/bolt-picture.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from './torque.module.css';
import { TorqueMore } from './torque-more.tsx';
import { useWrench } from './use-wrench.ts';
import { WrenchChoice } from './wrench-choice.tsx';
import { markFor, settingWords } from './wrench-words.ts';

const NO_GAUGES: [] = [];

/** The walk around the bolts: which one, to what, with the wrench at what; one large button. */
export function TorqueWalkPanel({ walk }: { readonly walk: TorqueWalk }) {
  const by = useBy();
  const gauges = useQuery(deskQuery.bench.gauges.queryOptions({ input: {} }));
  const wrench = useWrench(gauges.data ?? NO_GAUGES);
  const pull = useWrite(deskQuery.bench.pullBolt.mutationOptions());
  const button = useRef<HTMLButtonElement>(null);
  const { next } = walk;
  const whole = useRef<HTMLDivElement>(null);
  const pulling = useRef(next !== null);
  useEffect(() => {
    // The button of the last bolt goes with it.
    if (pulling.current && next === null) whole.current?.focus();
    pulling.current = next !== null;
  }, [next]);
  const stage = next?.stage ?? walk.stages.length;
  const target = walk.stages[stage - 1]?.target ?? 0;
  const mark = markFor(walk, target, wrench);
  const turnOf = (bolt: number): number => walk.order.indexOf(bolt) + 1;
  const send = (bolt: number, outOfOrder: boolean) =>
    pull.mutate({
      by,
      jobId: walk.jobId,
      feature: walk.feature,
      cylinder: walk.cylinder,
      stage,
      bolt,
      gaugeId: wrench.gauge?.id ?? null,
      extension: wrench.extension,
      angle: wrench.angle,
      wrenchLength: wrench.length,
      outOfOrder,
    });
  return (
    <section aria-label={`Tightening: ${walk.label}`} className={classes.walk}>
      <div className={classes.picture}>
        <BoltPicture
          fastener={walk}
          stage={{ next: next?.bolt ?? null, pulled: walk.pulled[stage - 1] ?? [] }}
        />
        <Text size="sm">
          {walk.count} bolts {walk.thread}
          {walk.condition !== '' && `, ${walk.condition}`}. The number is the turn.
        </Text>
      </div>
      <div className={classes.figures}>
        {next === null ? (
          <div className={classes.whole} role="status" ref={whole} tabIndex={-1}>
            <IconCircleCheck size={36} aria-hidden />
            <span>Every bolt was pulled to every stage.</span>
          </div>
        ) : (
          <>
            <p className={classes.now} role="status">
              <span>
                Stage {stage} of {walk.stages.length}
              </span>
              <strong>Bolt {turnOf(next.bolt)}</strong>
            </p>
            <dl className={classes.torques}>
              <div>
                <dt>Torque at the bolt</dt>
                <dd>
                  {target} {unitLabel(walk.unit)}
                </dd>
              </div>
              <div className={classes.setting}>
                <dt>Set the wrench to</dt>
                <dd>{mark === null ? 'no setting' : settingWords(mark)}</dd>
              </div>
            </dl>
          </>
        )}
        <Stages walk={walk} />
      </div>
      {!walk.closed && (
        <div className={classes.below}>
          {next !== null && (
            <>
              {pull.isError && <RefusalAlert error={pull.error} />}
              <Button
                size="xl"
                fullWidth
                className={classes.pull}
                ref={button}
                disabled={mark === null}
                // Not disabled while it is being written: the focus stays for the next bolt.
                aria-busy={pull.isPending}
                leftSection={<IconTool size={28} aria-hidden />}
                // The next bolt may be pulled while the page still catches up with the last one.
                onClick={() => send(next.bolt, false)}
              >
                Bolt {turnOf(next.bolt)} pulled
              </Button>
              <WrenchChoice wrench={wrench} mark={mark} />
            </>
          )}
          <TorqueMore
            walk={walk}
            stage={stage}
            busy={pull.isPending || mark === null}
            onOutOfOrder={(bolt) => send(bolt, true)}
            onBegun={() => button.current?.focus()}
          />
        </div>
      )}
    </section>
  );
}

function Stages({ walk }: { readonly walk: TorqueWalk }) {
  return (
    <ol className={classes.stages} aria-label="Stages">
      {walk.stages.map(({ share, target }, index) => {
        const pulled = walk.pulled[index]?.length ?? 0;
        return (
          <li key={share} data-whole={pulled === walk.count}>
            <span>
              {target} {unitLabel(walk.unit)}
            </span>
            <progress
              max={walk.count}
              value={pulled}
              aria-label={`Stage ${index + 1}, ${target} ${unitLabel(walk.unit)}`}
            />
            <span>
              {pulled} of {walk.count}
            </span>
          </li>
        );
      })}
    </ol>
  );
}
