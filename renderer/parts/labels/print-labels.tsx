import { Button, Group, NumberInput, SegmentedControl, Stack, Text } from '@mantine/core';
import { IconDownload, IconPrinter } from '@tabler/icons-react';
import { useMutation } from '@tanstack/react-query';
import { useId, useState } from 'react';
import { z } from 'zod';
import type { LabelSettings, LabelSort } from '../../../shared/contract/parts/index.ts';
import { Card } from '../../common/card.tsx';
import { paperBytes, printPaper, savePaper } from '../../common/connection/papers.ts';
import { desk } from '../../common/desk.ts';
import { rememberChoice, rememberedChoice } from '../../common/local-choice.ts';
import { RefusalAlert, refusalOf } from '../../common/refusal.tsx';
import { labelsOf, type Wanted } from './label-list.ts';
import { SheetPlaces } from './sheet-places.tsx';

type Form = 'sheet' | 'single';

const TooSmall = z.object({ numbers: z.array(z.string()) });

interface PrintLabelsProps {
  list: readonly Wanted[];
  settings: LabelSettings;
}

/** What the labels are for and what they are printed on. */
export function PrintLabels({ list, settings }: PrintLabelsProps) {
  const sortId = useId();
  const formId = useId();
  const [sort, setSort] = useState<LabelSort>('shelf');
  const [form, setForm] = useState<Form>(() =>
    rememberedChoice('label-form') === 'single' ? 'single' : 'sheet',
  );
  const [startAt, setStartAt] = useState(1);
  const { rows, columns } = settings.sheet;
  const first = Math.min(startAt, rows * columns);
  const count = labelsOf(list);
  const pages = form === 'single' ? count : Math.ceil((first - 1 + count) / (rows * columns));
  const make = useMutation({
    mutationFn: async (then: 'print' | 'save') => {
      const labels = list.map(({ partId, copies }) => ({ partId, copies }));
      const file = await desk.parts.labelFile({ sort, form, startAt: first, labels });
      const bytes = paperBytes(file.pdf);
      if (then === 'print') await printPaper(bytes);
      else await savePaper(file.fileName, bytes);
    },
  });
  const tooSmall = TooSmall.safeParse(make.error === null ? null : refusalOf(make.error).data);
  return (
    <Card title="Print">
      <Stack gap="sm">
        <div>
          <Text component="span" id={sortId} fw={600}>
            Labels for
          </Text>
          <SegmentedControl<LabelSort>
            fullWidth
            aria-labelledby={sortId}
            data={[
              { value: 'shelf', label: 'The shelf' },
              { value: 'part', label: 'The parts' },
            ]}
            value={sort}
            onChange={setSort}
          />
        </div>
        <div>
          <Text component="span" id={formId} fw={600}>
            On
          </Text>
          <SegmentedControl<Form>
            fullWidth
            aria-labelledby={formId}
            data={[
              { value: 'sheet', label: 'Sheets' },
              { value: 'single', label: 'A roll' },
            ]}
            value={form}
            onChange={(next) => {
              setForm(next);
              rememberChoice('label-form', next);
            }}
          />
        </div>
        {form === 'sheet' ? (
          <NumberInput
            label="First free label"
            description="Counted row by row from the top left"
            min={1}
            max={rows * columns}
            clampBehavior="strict"
            allowDecimal={false}
            value={first}
            onChange={(value) => typeof value === 'number' && value >= 1 && setStartAt(value)}
          />
        ) : (
          <Text size="sm" c="dimmed">
            {settings.single.width} × {settings.single.height} mm each
          </Text>
        )}
        <Text role="status" fw={600}>
          {count} {count === 1 ? 'label' : 'labels'}
          {form === 'sheet' && count > 0 && `, ${pages} ${pages === 1 ? 'sheet' : 'sheets'}`}
        </Text>
        <RefusalAlert error={make.error} />
        {tooSmall.success && <Text size="sm">{tooSmall.data.numbers.join(', ')}</Text>}
        <Group grow>
          <Button
            disabled={count === 0}
            leftSection={<IconPrinter size={18} aria-hidden />}
            loading={make.isPending && make.variables === 'print'}
            onClick={() => make.mutate('print')}
          >
            Print
          </Button>
          <Button
            variant="default"
            disabled={count === 0}
            leftSection={<IconDownload size={18} aria-hidden />}
            loading={make.isPending && make.variables === 'save'}
            onClick={() => make.mutate('save')}
          >
            Save as PDF
          </Button>
        </Group>
        {form === 'sheet' && (
          <SheetPlaces sheet={settings.sheet} startAt={first} count={count} onStart={setStartAt} />
        )}
        <Text size="sm" c="dimmed">
          Print at actual size: fitted to the page, the labels lie beside their places.
        </Text>
      </Stack>
    </Card>
  );
}
