import { Button, Group, Kbd, Stack, Text } from '@mantine/core';
import { IconClipboardCheck } from '@tabler/icons-react';
import { type KeyboardEvent, useEffect, useRef } from 'react';
import { Card } from '../../common/card.tsx';
import { RefusalAlert } from '../../common/refusal.tsx';
import { AgreedFields } from './agreed-fields.tsx';
import { CautionNote } from './caution-note.tsx';
import { ComplaintFields } from './complaint-fields.tsx';
import { CustomerFields } from './customer-fields.tsx';
import type { TakeInDraft } from './draft.ts';
import { focusField } from './field-order.ts';
import { intakeCautions } from './intake-cautions.ts';
import { KnownMachine } from './known-machine.tsx';
import { EngineFields, MachineFields } from './machine-fields.tsx';
import { joinMakeAndModel } from './make-and-model.ts';
import { MoreFields } from './more-fields.tsx';
import { enterMovesOn, focusNext } from './move-on.ts';
import { SerialTaken } from './serial-taken.tsx';
import classes from './take-in.module.css';
import type { Taken } from './taken-panel.tsx';
import { useKnown } from './use-known.ts';
import { usePlates } from './use-plates.ts';
import { useTakeIn } from './use-take-in.ts';

interface TakeInFormProps {
  draft: TakeInDraft;
  setDraft: (next: (draft: TakeInDraft) => TakeInDraft) => void;
  onTaken: (taken: Taken) => void;
}

export function TakeInForm({ draft, setDraft, onTaken }: TakeInFormProps) {
  const form = useRef<HTMLFormElement>(null);
  const plates = usePlates(draft);
  const takingIn = useTakeIn({ draft, setDraft, plates, form, onTaken });
  const { change, faults } = takingIn;
  const known = useKnown(draft, change);
  const part = { draft, change, faults };
  useEffect(() => focusField(form.current, 'name'), []);

  /** After the page has drawn what replaced the fields. */
  const goTo = (field: Parameters<typeof focusField>[1]) =>
    setTimeout(() => focusField(form.current, field));

  return (
    <form
      ref={form}
      noValidate
      aria-label="Intake"
      onKeyDownCapture={(event) => {
        if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return;
        event.preventDefault();
        event.stopPropagation();
        takingIn.start();
      }}
      onKeyDown={enterMovesOn}
      onSubmit={(event) => {
        event.preventDefault();
        takingIn.start();
      }}
    >
      <div className={classes.columns}>
        <Stack gap="sm">
          <Card title="Customer">
            <CustomerFields
              {...part}
              onKnown={(customer) => {
                known.takeCustomer(customer);
                goTo(draft.knownMachine === null ? 'serial' : 'complaint');
              }}
              onForget={() => {
                known.forgetCustomer();
                goTo('name');
              }}
            />
          </Card>
          <Card title="Machine and engine">
            {draft.knownMachine === null ? (
              <Stack gap="xs">
                <MachineFields
                  {...part}
                  onKnown={(machine) => {
                    known.takeMachine(machine);
                    goTo('complaint');
                  }}
                  onMet={(machine) => {
                    if (known.meetMachine(machine)) goTo('complaint');
                  }}
                  onKindEnter={(event: KeyboardEvent<HTMLInputElement>) => {
                    event.preventDefault();
                    event.stopPropagation();
                    if (form.current) focusNext(form.current, event.currentTarget);
                  }}
                  plates={plates.machinePlates}
                  knownMakes={plates.machineMakes}
                />
                <EngineFields
                  {...part}
                  suggestions={plates.engineSuggestions}
                  onPick={(id) => {
                    const model = plates.modelById(id);
                    if (model === undefined) return;
                    change({ engine: joinMakeAndModel(model), engineModel: model });
                    goTo('typeCode');
                  }}
                  understood={plates.engineUnderstood}
                  knownMakes={plates.engineMakes}
                />
              </Stack>
            ) : (
              <KnownMachine
                machine={draft.knownMachine}
                draft={draft}
                fault={faults.serial}
                onForget={() => {
                  known.forgetMachine();
                  goTo('serial');
                }}
                onChangedHands={(changedHands) => change({ changedHands })}
                onTakeInAgain={(takeInAgain) => change({ takeInAgain, serial: draft.serial })}
                onTakeOwner={() => {
                  known.takeOwner();
                  goTo('complaint');
                }}
              />
            )}
            {takingIn.shown === 'machine' && (
              <SerialTaken
                error={takingIn.error}
                serial={draft.serial}
                onUse={(machine) => {
                  known.takeMachine(machine);
                  takingIn.reset();
                  goTo('complaint');
                }}
              />
            )}
          </Card>
        </Stack>
        <Stack gap="sm">
          <Card title="What is wrong">
            <ComplaintFields {...part} />
          </Card>
          <CautionNote
            title="While it comes in"
            cautions={intakeCautions(draft.knownMachine?.kind ?? draft.kind)}
          />
        </Stack>
        <div className={classes.last}>
          <Card title="What is agreed">
            <AgreedFields {...part}>
              {takingIn.signatureLapsed && (
                <Text role="status" size="sm" mt="xs">
                  What was signed for has changed since: let the customer sign once more.
                </Text>
              )}
              <RefusalAlert error={takingIn.shown === 'whole' ? takingIn.error : null} />
              <RefusalAlert error={known.error} />
              <Group gap="sm" mt="sm">
                <Button
                  type="submit"
                  size="md"
                  data-take-in
                  loading={takingIn.busy}
                  leftSection={<IconClipboardCheck size={20} aria-hidden />}
                >
                  Take in
                </Button>
                <Text size="sm" component="span">
                  <Kbd>Ctrl</Kbd> + <Kbd>Enter</Kbd>
                </Text>
              </Group>
            </AgreedFields>
          </Card>
        </div>
      </div>
      <MoreFields {...part} />
    </form>
  );
}
