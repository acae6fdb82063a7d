import {
  Button,
  Group,
  Modal,
  NumberInput,
  Radio,
  SegmentedControl,
  Stack,
  Switch,
  Text,
} from '@mantine/core';
import { type FormEvent, useState } from 'react';
import type { LabelSettings, LabelSymbol } from '../../../shared/contract/parts/index.ts';
import { LABEL_PAPERS, type LabelPaper } from '../../../shared/work/parts/label-layout.ts';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useWrite } from '../../common/use-write.ts';
import classes from './labels.module.css';

const SHEET_FIELDS = [
  ['columns', 'Columns', ''],
  ['rows', 'Rows', ''],
  ['labelWidth', 'Label, width', ' mm'],
  ['labelHeight', 'Label, height', ' mm'],
  ['marginLeft', 'Left margin', ' mm'],
  ['marginTop', 'Top margin', ' mm'],
  ['gapAcross', 'Gap between columns', ' mm'],
  ['gapDown', 'Gap between rows', ' mm'],
] as const;

interface SettingsDialogProps {
  settings: LabelSettings;
  onClose: () => void;
}

/** How the shop's label sheets and rolls are made, as their packages tell it. */
export function SettingsDialog({ settings, onClose }: SettingsDialogProps) {
  const by = useBy();
  const [draft, setDraft] = useState(settings);
  const save = useWrite(deskQuery.parts.setLabelSettings.mutationOptions({ onSuccess: onClose }));
  const errors = fieldErrors(save.error);
  const send = (event: FormEvent) => {
    event.preventDefault();
    save.mutate({ by, settings: draft });
  };
  const sheet = (name: (typeof SHEET_FIELDS)[number][0], value: string | number) =>
    typeof value === 'number' &&
    setDraft((before) => ({ ...before, sheet: { ...before.sheet, [name]: value } }));
  const single = (name: 'width' | 'height', value: string | number) =>
    typeof value === 'number' &&
    setDraft((before) => ({ ...before, single: { ...before.single, [name]: value } }));
  return (
    <Modal opened onClose={onClose} title="Label sizes and symbol" size="lg">
      <form onSubmit={send} noValidate aria-label="Label sizes and symbol">
        <Stack>
          <div>
            <Text fw={600} component="h3" fz="md">
              Sheets
            </Text>
            <SegmentedControl<LabelPaper>
              aria-label="Paper"
              my="xs"
              data={[...LABEL_PAPERS]}
              value={draft.sheet.paper}
              onChange={(paper) =>
                setDraft((before) => ({ ...before, sheet: { ...before.sheet, paper } }))
              }
            />
            <div className={classes.fields}>
              {SHEET_FIELDS.map(([name, label, suffix]) => (
                <NumberInput
                  key={name}
                  label={label}
                  suffix={suffix}
                  min={0}
                  decimalScale={suffix === '' ? 0 : 2}
                  value={draft.sheet[name]}
                  error={errors[`settings.sheet.${name}`]}
                  onChange={(value) => sheet(name, value)}
                />
              ))}
            </div>
          </div>
          <div>
            <Text fw={600} component="h3" fz="md" mb="xs">
              A roll
            </Text>
            <div className={classes.fields}>
              {(['width', 'height'] as const).map((name) => (
                <NumberInput
                  key={name}
                  label={name === 'width' ? 'Roll label, width' : 'Roll label, height'}
                  suffix=" mm"
                  min={0}
                  decimalScale={2}
                  value={draft.single[name]}
                  error={errors[`settings.single.${name}`]}
                  onChange={(value) => single(name, value)}
                />
              ))}
            </div>
          </div>
          <Radio.Group
            label="Symbol"
            value={draft.symbol}
            onChange={(symbol) =>
              setDraft((before) => ({ ...before, symbol: symbol === 'qr' ? 'qr' : 'code-128' }))
            }
          >
            <Stack gap={6} mt={6}>
              <Radio
                value={'code-128' satisfies LabelSymbol}
                label="Bars (Code 128)"
                description="For every reader; plain letters and digits"
              />
              <Radio
                value={'qr' satisfies LabelSymbol}
                label="QR code"
                description="For small labels, long numbers and any alphabet; needs a reader with a camera"
              />
            </Stack>
          </Radio.Group>
          <Switch
            label="Price on the shelf’s label"
            checked={draft.showPrice}
            onChange={(event) => {
              const showPrice = event.currentTarget.checked;
              setDraft((before) => ({ ...before, showPrice }));
            }}
          />
          <RefusalAlert error={save.error} />
          <Group justify="flex-end">
            <Button type="submit" loading={save.isPending}>
              Save
            </Button>
          </Group>
        </Stack>
      </form>
    </Modal>
  );
}
