import { Button, Menu } from '@mantine/core';
import { notifications } from '@mantine/notifications';
import { IconCheck, IconChevronDown } from '@tabler/icons-react';
import type { PromiseId } from '../../../shared/contract/ids.ts';
import { APPROVAL_WAY_LABELS, APPROVAL_WAYS } from '../../../shared/work/vocabulary.ts';
import { deskQuery } from '../../common/desk.ts';
import { refusalOf } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';

interface TellMenuProps {
  promiseId: PromiseId;
  customerName: string;
}

/** Notes that the customer was told of the day promised, and how. */
export function TellMenu({ promiseId, customerName }: TellMenuProps) {
  const by = useBy();
  const tell = useWrite(
    deskQuery.counter.tellPromise.mutationOptions({
      onError: (error) =>
        notifications.show({ color: 'red', message: refusalOf(error).message, autoClose: false }),
    }),
  );
  return (
    <Menu position="bottom-start">
      <Menu.Target>
        <Button
          variant="default"
          loading={tell.isPending}
          aria-label={`${customerName} was told`}
          leftSection={<IconCheck size={18} aria-hidden />}
          rightSection={<IconChevronDown size={18} aria-hidden />}
        >
          Told
        </Button>
      </Menu.Target>
      <Menu.Dropdown>
        {APPROVAL_WAYS.map((how) => (
          <Menu.Item key={how} onClick={() => tell.mutate({ by, promiseId, how })}>
            {APPROVAL_WAY_LABELS[how]}
          </Menu.Item>
        ))}
      </Menu.Dropdown>
    </Menu>
  );
}
