import { Anchor, Button, Group, Modal, Stack, Switch, Text } from '@mantine/core';
import { IconRulerMeasure } from '@tabler/icons-react';
import { useState } from 'react';
import type { JobId } from '../../shared/contract/ids.ts';
import { deskQuery } from './desk.ts';
import { PaperButton } from './paper-button.tsx';
import { RefusalAlert } from './refusal.tsx';
import { useShop } from './shop.tsx';
import { useBy } from './station.tsx';
import { useWrite } from './use-write.ts';

/** Issues the clearance sheet of what stands now, in one unit or in both, and hands it out. */
export function ClearanceSheetButton(props: {
  readonly jobId: JobId;
  /** As a link in a line of text, where a button would take the place of what is measured. */
  readonly inText?: boolean;
}) {
  const { jobId, inText = false } = props;
  const by = useBy();
  const shop = useShop();
  const [opened, setOpened] = useState(false);
  const [bothUnits, setBothUnits] = useState(shop.bothUnits);
  const print = useWrite(deskQuery.bench.printClearanceSheet.mutationOptions());
  const open = () => {
    print.reset();
    setOpened(true);
  };
  return (
    <>
      {inText ? (
        <Anchor component="button" type="button" inherit onClick={open}>
          Clearance sheet…
        </Anchor>
      ) : (
        <Button
          variant="default"
          mih={44}
          leftSection={<IconRulerMeasure size={18} aria-hidden />}
          onClick={open}
        >
          Clearance sheet…
        </Button>
      )}
      <Modal opened={opened} onClose={() => setOpened(false)} title="Clearance sheet" centered>
        <Stack gap="md">
          <Text>
            A paper of all readings that stand now, with specification, gauge and verdict. Readings
            taken later come on a new sheet; this one stays as it is.
          </Text>
          {print.data === undefined ? (
            <>
              <Switch
                size="lg"
                label="Show both units"
                checked={bothUnits}
                onChange={(event) => setBothUnits(event.currentTarget.checked)}
              />
              <RefusalAlert error={print.error} />
              <Group>
                <Button
                  size="md"
                  h={48}
                  loading={print.isPending}
                  onClick={() => print.mutate({ by, jobId, bothUnits })}
                >
                  Issue the sheet
                </Button>
                <Button size="md" h={48} variant="default" onClick={() => setOpened(false)}>
                  Not now
                </Button>
              </Group>
            </>
          ) : (
            <>
              <Text role="status">It is issued, and is kept among the papers of the job.</Text>
              <PaperButton paper={print.data} />
            </>
          )}
        </Stack>
      </Modal>
    </>
  );
}
