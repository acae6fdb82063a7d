import { Button, Menu, Text } from '@mantine/core';
import { useDisclosure } from '@mantine/hooks';
import { IconDeviceFloppy, IconStack2 } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import type { Bundle, LineInput } from '../../../shared/contract/till/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { deskQuery } from '../../common/desk.ts';
import { useShop } from '../../common/shop.tsx';
import { KeepBundle } from './keep-bundle.tsx';

interface BundleMenuProps {
  /** The lines that can be read, to be kept. */
  lines: readonly LineInput[];
  onTake: (bundle: Bundle) => void;
}

/** Lines that are used together: takes a bundle, or keeps what is typed as one. */
export function BundleMenu({ lines, onTake }: BundleMenuProps) {
  const { data: bundles = [] } = useQuery(deskQuery.till.bundles.queryOptions({ input: {} }));
  const [keeping, dialog] = useDisclosure(false);
  const { locale } = useShop();
  return (
    <>
      <Menu position="bottom-start" width={340}>
        <Menu.Target>
          <Button variant="default" size="sm" leftSection={<IconStack2 size={18} aria-hidden />}>
            Bundles
          </Button>
        </Menu.Target>
        <Menu.Dropdown mah={360} style={{ overflowY: 'auto' }}>
          {bundles.length === 0 && (
            <Menu.Label>
              None is kept yet. Type lines that go together, then keep them here.
            </Menu.Label>
          )}
          {bundles.map((bundle) => (
            <Menu.Item key={bundle.id} onClick={() => onTake(bundle)}>
              <Text size="sm" fw={600}>
                {bundle.name}
              </Text>
              <Text size="xs" c="dimmed">
                {bundle.lines.length} {bundle.lines.length === 1 ? 'line' : 'lines'}
                {bundle.hours > 0 && `, usually ${formatQuantity(bundle.hours, locale)} h`}
                {bundle.note !== '' && ` · ${bundle.note}`}
              </Text>
            </Menu.Item>
          ))}
          <Menu.Divider />
          <Menu.Item
            leftSection={<IconDeviceFloppy size={18} aria-hidden />}
            disabled={lines.length === 0}
            onClick={dialog.open}
          >
            Keep these lines as a bundle …
          </Menu.Item>
        </Menu.Dropdown>
      </Menu>
      {keeping && <KeepBundle lines={lines} bundles={bundles} onClose={dialog.close} />}
    </>
  );
}
