import { Alert, Button, Text } from '@mantine/core';
import { IconCircleCheck, IconDeviceFloppy } from '@tabler/icons-react';
import { Card } from '../common/card.tsx';
import { deskQuery } from '../common/desk.ts';
import { useFormat } from '../common/format.ts';
import { RefusalAlert } from '../common/refusal.tsx';
import { useShop } from '../common/shop.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import classes from './office.module.css';

/** Makes a copy of the whole store, and says what it is and where. */
export function BackUpCard() {
  const by = useBy();
  const format = useFormat();
  const { locale } = useShop();
  const backUp = useWrite(deskQuery.office.backUp.mutationOptions());
  const made = backUp.data;
  return (
    <Card title="Back-up">
      <Text size="sm" mb="sm" maw="60ch">
        A copy of the whole store, opened and checked before it counts. Carry it to another machine
        or disk: a copy beside the original is lost with it.
      </Text>
      <Button
        loading={backUp.isPending}
        leftSection={<IconDeviceFloppy size={20} aria-hidden />}
        onClick={() => backUp.mutate({ by })}
      >
        Back up now
      </Button>
      <div aria-live="polite">
        <RefusalAlert error={backUp.error} />
        {made !== undefined && (
          <Alert
            color="green"
            variant="light"
            mt="sm"
            icon={<IconCircleCheck aria-hidden />}
            title="Backed up and verified"
          >
            <dl className={classes.made}>
              <dt>File</dt>
              <dd>{made.fileName}</dd>
              <dt>Folder</dt>
              <dd>{made.folder}</dd>
              <dt>Size</dt>
              <dd>{sizeOf(made.bytes, locale)}</dd>
              <dt>SHA-256</dt>
              <dd className={classes.mono}>{made.sha256}</dd>
              <dt>Made</dt>
              <dd>{format.instant(made.at)}</dd>
            </dl>
          </Alert>
        )}
      </div>
    </Card>
  );
}

function sizeOf(bytes: number, locale: string): string {
  const megabytes = bytes >= 1_000_000;
  const count = bytes / (megabytes ? 1_000_000 : 1_000);
  return new Intl.NumberFormat(locale, {
    style: 'unit',
    unit: megabytes ? 'megabyte' : 'kilobyte',
    maximumFractionDigits: 1,
  }).format(count);
}
