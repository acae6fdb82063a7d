import { Button, Group, Menu, Modal, Stack, Text } from '@mantine/core';
import { useState } from 'react';
import type { TorqueWalk } from '../../../shared/contract/bench/index.ts';
import { unitLabel } from '../../../shared/trade/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useFormat } from '../../common/format.ts';
import { RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from './torque.module.css';

/** What is not the usual way round: another bolt, the whole sequence anew, and what was pulled so far. */
export function TorqueMore(props: {
  readonly walk: TorqueWalk;
  readonly stage: number;
  readonly busy: boolean;
  readonly onOutOfOrder: (bolt: number) => void;
  /** The dialog is gone and the walk starts from the first bolt. */
  readonly onBegun: () => void;
}) {
  const { walk, stage } = props;
  const [asking, setAsking] = useState(false);
  const pulled = walk.pulled[stage - 1] ?? [];
  const others = walk.order.filter((bolt) => bolt !== walk.next?.bolt && !pulled.includes(bolt));
  const turnOf = (bolt: number): number => walk.order.indexOf(bolt) + 1;
  return (
    <>
      <Group gap="sm">
        {walk.next !== null && others.length > 0 && (
          <Menu position="top-start">
            <Menu.Target>
              <Button variant="default" size="md" mih={48} disabled={props.busy}>
                Another bolt…
              </Button>
            </Menu.Target>
            <Menu.Dropdown>
              <Menu.Label>Pulled out of its order: it is kept as such</Menu.Label>
              {others.map((bolt) => (
                <Menu.Item key={bolt} mih={48} onClick={() => props.onOutOfOrder(bolt)}>
                  Bolt {turnOf(bolt)} pulled instead
                </Menu.Item>
              ))}
            </Menu.Dropdown>
          </Menu>
        )}
        {walk.done > 0 && (
          <Button variant="default" size="md" mih={48} onClick={() => setAsking(true)}>
            Begin anew…
          </Button>
        )}
      </Group>
      <BeginAnew
        walk={walk}
        opened={asking}
        onClose={() => setAsking(false)}
        onBegun={props.onBegun}
      />
      {walk.pulls.length > 0 && <Pulls walk={walk} turnOf={turnOf} />}
    </>
  );
}

function BeginAnew(props: {
  readonly walk: TorqueWalk;
  readonly opened: boolean;
  readonly onClose: () => void;
  readonly onBegun: () => void;
}) {
  const { jobId, feature, cylinder } = props.walk;
  const by = useBy();
  const write = useWrite(deskQuery.bench.beginTorqueAnew.mutationOptions());
  return (
    <Modal
      opened={props.opened}
      onClose={props.onClose}
      onExitTransitionEnd={() => {
        if (write.isSuccess) props.onBegun();
        write.reset();
      }}
      title="Begin the tightening anew"
      size="lg"
    >
      <Stack>
        <Text>
          Loosen every bolt first, in the order backwards. The walk starts again at bolt 1 of stage
          1; what was pulled so far stays on record.
        </Text>
        {write.isError && <RefusalAlert error={write.error} />}
        <Group justify="flex-end">
          <Button variant="default" size="md" h={52} onClick={props.onClose}>
            Leave it
          </Button>
          <Button
            size="md"
            h={52}
            loading={write.isPending}
            onClick={() =>
              write.mutate({ by, jobId, feature, cylinder }, { onSuccess: props.onClose })
            }
          >
            All are loose: begin anew
          </Button>
        </Group>
      </Stack>
    </Modal>
  );
}

function Pulls({
  walk,
  turnOf,
}: {
  readonly walk: TorqueWalk;
  readonly turnOf: (bolt: number) => number;
}) {
  const format = useFormat();
  return (
    <details className={classes.pulls}>
      <summary>Pulled so far: {walk.pulls.length}</summary>
      <ul>
        {walk.pulls.toReversed().map((pull) => (
          <li key={`${pull.at} ${pull.stage} ${pull.bolt}`}>
            {walk.round > 1 && `Round ${pull.round}, `}stage {pull.stage}, bolt {turnOf(pull.bolt)}:{' '}
            {pull.setting} {unitLabel(pull.settingUnit)}
            {pull.wrench !== '' && ` on ${pull.wrench}`}
            {pull.extension > 0 && `, extension ${pull.extension} mm at ${pull.angle}°`}
            {pull.wrenchLength !== null && `, wrench ${pull.wrenchLength} mm`}
            {pull.outOfOrder && ', out of order'}, {pull.by}, {format.instant(pull.at)}
          </li>
        ))}
      </ul>
    </details>
  );
}
